"""Rows that only name another row, by whatever verb: common practice, no source."""

from __future__ import annotations

import itertools

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

VERBS = (
    "as", "like", "same as", "repeat", "rep.", "work as for", "exactly like", "just like",
    "is like", "is the same as", "identical to", "follow", "copy", "see", "per", "use", "do as in",
    "made like", "worked as", "works as",
)  # fmt: skip
ROWS = ("row 2", "2nd row", "the second row", "row two", "R2")
TAILS = ("", ".", " (24)", ", turn", " once more", " = 24")


@pytest.mark.parametrize("verb", VERBS)
def test_a_row_by_the_name_of_another(verb: str) -> None:
    for row, tail in itertools.product(ROWS, TAILS):
        text = (
            "Ch 21.\nRow 1: sc in 2nd ch from hook and in each ch across. (20)\n"
            "Row 2: Ch 1, 2 sc in first st, sc in each st to last st, 2 sc in last st. (22)\n"
            f"Row 3: {verb} {row}{tail}\n"
        )
        counted = count_pattern(parse_pattern(text))
        counts = [one.count for part in counted.parts for one in part.rows if one.label != "Start"]
        assert (row, tail, counts, counted.problems) == (row, tail, [20, 22, 24], ())


@pytest.mark.parametrize(
    "call",
    ["as last row but one", "Repeat the row before last", "as 1", "same as 1 (22)", "like 1"],
)
def test_the_row_before_the_last(call: str) -> None:
    text = f"CO 20 sts.\nRow 1: knit\nRow 2: k1, M1, k to last st, M1, k1. (22)\nRow 3: {call}\n"
    counted = count_pattern(parse_pattern(text))
    assert [one.count for part in counted.parts for one in part.rows] == [20, 20, 22, 22]


def test_a_row_that_is_another() -> None:
    text = "Rnd 1: 6 sc in ring (6)\nRnd 2: inc around (12)\nRnd 3: (sc, inc) around\n"
    counted = count_pattern(parse_pattern(text + "Rnd 4 = Rnd 2\n"))
    assert [one.count for part in counted.parts for one in part.rows] == [6, 12, 18, 36]
