"""Pieces that begin with so many stitches where nothing is said of casting on: each such sentence
begins the piece with its number, and sentences of other numbers begin none.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

STARTS = (
    "You need six sts to begin.", "Begin with 6 sts.", "Start off with 6 sts on 3 dpns.",
    "6 sts in T, joined, whichever cast-on you like.", "6 sts on dpns, joined.",
    "Put 6 sts on your needles.", "Get yourself six stitches, joined.", "6 sts to begin, join.",
    "First, 6 sts on three needles.", "It starts with 6 sts, joined.",
    "Six stitches to begin with.",
    "The buoy begins with 6 sts.", "Using dpns, 6 sts.", "With T, 6 sts, join.",
    "Cast-on of 6 sts.", "Start: 6 sts", "Beginning: 6 sts, joined", "Loop 6 sts on to a needle.",
    "Have 6 sts on your dpns and join.", "Worked on 6 sts, in the round.", "Needs 6 sts.",
    "Pinhole cast on, 6 sts.", "Needle 3 mm, 6 sts in cream.", "(in the round, green, 6 sts)",
)  # fmt: skip
ROWS = "Rnd 1: knit.\nRnd 2: *k1, yo; rep from * around.\nRnd 3: knit."


def counts(text: str) -> list[int | None]:
    """The counts of all rows."""
    pattern = count_pattern(parse_pattern(text, "", ""))
    return [row.count for part in pattern.parts for row in part.rows]


@pytest.mark.parametrize("apart", ["\n", "\n\n"])
@pytest.mark.parametrize("head", ["", "Buoy\n\n", "~ THE BUOY ~\n"])
@pytest.mark.parametrize("said", STARTS)
def test_a_piece_begins_with_its_stitches(said: str, head: str, apart: str) -> None:
    assert counts(f"{head}{said}{apart}{ROWS}") == [6, 6, 12, 12]


@pytest.mark.parametrize("head", ["~ THE FLAG ~ (green, 3 sts)", "THE FLAG (worked flat, 3 sts)"])
def test_a_later_piece_tells_its_stitches_in_its_heading(head: str) -> None:
    text = f"THE BUOY\nCast on 6 sts.\n{ROWS}\n\n{head}\nRow 1: knit.\nRow 2: k1, m1, k1, m1, k1."
    assert counts(text) == [6, 6, 12, 12, 3, 3, 5]


@pytest.mark.parametrize(
    "note",
    [
        "Gauge: 6 sts to 1 inch.", "6 sts = 2 cm", "Works over a multiple of 6 sts.",
        "The repeat is 6 sts.", "Swatch of 6 sts first.", "Each repeat has 6 sts and 4 rows.",
    ],
)  # fmt: skip
def test_other_numbers_of_stitches_begin_nothing(note: str) -> None:
    assert counts(f"Buoy\n\n{note}\n\nRow 1: knit.\nRow 2: knit.")[-2:] == [None, None]
