"""Rows of which only the colour is told, and spaces named before stitches; texts of our own
invention.
"""

from __future__ import annotations

import pytest

from reader.app.check import as_json
from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

BAND = """Cast on 96 with A. Join.
Round 1: K.
Round 2: *K8, m1; rep from *.
Round 3: {}
Round 4: *K1 B, k3 A; rep from *."""
BALL = """Round 1: 6 sc in magic ring.
Round 2: inc around.
Round 3: {}
Round 4: (sc, inc) 6 times."""
COLOURS = ["A.", "A", "With A.", "All B.", "In B.", "B only.", "White.", "In dark blue.", "red"]
MESH = """Ch 12, join.
Round 1: Ch 3, 23 dc in ring, join.
Round 2: Ch 4, *skip 1 dc, dc in next dc, ch 1; rep from * around, join.
Round 3: """


def counts_of(text: str) -> list[int | None]:
    told = as_json(count_pattern(parse_pattern(text), 0))
    return [one["count"] for part in told["parts"] for one in part["rounds"]]


@pytest.mark.parametrize("colour", COLOURS)
def test_a_row_in_one_colour(colour: str) -> None:
    assert counts_of(BAND.format(colour)) == [96, 96, 108, 108, 108]
    assert counts_of(BALL.format(colour)) == [6, 12, 12, 18]


def test_a_list_of_colours_is_no_rows() -> None:
    rows = "Ch 11.\nRow 1: Sc in 2nd ch and in each ch.\nRow 2: Ch 1, sc across.\n\nColours\n"
    assert counts_of(f"{rows}Row 1: A\nRow 2: B") == [10, 10]


@pytest.mark.parametrize(
    ("words", "count"),
    [
        ("Ch 3, dc in each sp and in each dc around, join.", 24),
        ("Ch 3, dc in each ch-1 sp and each dc around, join.", 24),
        ("Ch 1, sc in each sp and each dc around, join.", 24),
        ("Ch 3, 1 dc in each dc and 2 dc in each ch-1 space around, join.", 36),
        ("Ch 1, 2 sc in each ch-1 sp and 1 sc in each dc, join.", 36),
        ("Ch 3, dc in each dc and each ch-1 space around, join.", 24),
    ],
)
def test_spaces_and_stitches(words: str, count: int) -> None:
    assert counts_of(MESH + words)[-1] == count
