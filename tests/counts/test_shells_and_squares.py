"""Shells told where they are made, and squares of a net told beside their stitches, as leaflets do;
the counts follow from their own arithmetic (common practice, no source).
"""

from __future__ import annotations

import itertools

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern


def counts_of(text: str) -> tuple[list[int | None], int]:
    counted = count_pattern(parse_pattern(text))
    rows = [row for part in counted.parts for row in part.rows if row.label != "Start"]
    return [row.count for row in rows], len(counted.problems)


MADE = (
    "(2 dc, ch 2, 2 dc) in 6th ch from hook—shell made",
    "(2 dc, ch 2, 2 dc) in 6th ch from hook (shell made)",
    "(2 dc, ch 2, 2 dc) in 6th ch from hook, shell made",
    "In 6th ch from hook make 2 dc, ch 2 and 2 dc (shell made)",
    "Shell of 2 dc, ch 2, 2 dc in 6th ch from hook",
)
AGAIN = (
    "shell in shell across, dc in turning ch",
    "* shell in sp of next shell; rep from * across, ending with dc in top of ch 3",
    "make shell in each shell, dc in t-ch",
    "2 dc, ch 2, 2 dc in center of each shell, dc in last st",
    "in ch-2 sp of each shell make 2 dc, ch 2 and 2 dc; dc in top of turning ch",
)


@pytest.mark.parametrize("again", AGAIN)
def test_shells_into_shells(again: str) -> None:
    """Four shells, and a stitch at each edge."""
    for made in MADE:
        text = (
            f"Ch 24.\nRow 1: {made}, * sk 4 ch, shell in next ch; rep from * to last 3 ch, sk 2 "
            f"ch, dc in last ch.\nRow 2: Ch 3, turn, {again}.\nRow 3: Ch 3, turn, {again}.\n"
        )
        assert (made, *counts_of(text)) == (made, [18, 18, 18], 0)


SQUARES = (
    ("and in next 2 ch (bl made)", "(sp made)", "dc in next 3 ch"),
    (", dc in next 2 ch (1 bl)", "(1 sp)", "dc in next 3 ch (1 bl)"),
    (", 1 d c in each of next 2 ch (block made)", "(space made)", "dc in each of next 3 ch"),
)
NEXT = ("1 bl, 5 sps, 1 bl", "Bl over bl, 5 sps, bl", "1 block, 5 spaces, 1 block")


def test_squares_beside_their_stitches() -> None:
    """A block, five open squares and a block: four stitches, five, and three."""
    for (first, second, last), row in itertools.product(SQUARES, NEXT):
        text = (
            f"Ch 24.\n1st row: Dc in 4th ch from hook {first}, * ch 2, sk 2 ch, dc in next ch "
            f"{second}; rep from * 4 more times, {last}. Ch 3, turn.\n2nd row: {row}. Ch 3, turn.\n"
            f"3rd row: {row}. Fasten off.\n"
        )
        assert (first, row, *counts_of(text)) == (first, row, [12, 12, 12], 0)
