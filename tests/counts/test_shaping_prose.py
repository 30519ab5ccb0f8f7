"""Crocheted garments told in sentences: armholes, one shoulder at a time, totals behind a row; all
text is our own.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.counts.counted import Verdict
from reader.pattern.parser import parse_pattern

BACK = """PILOT VEST

Back: Ch 41, s c in 2nd st from hook, 1 s c in each remaining st of ch, ch 1, turn.

"""
ARMHOLES = {
    "Next Row: Sl st across 1st 6 sts, work in pattern across row to within last 6 sts, sl st in "
    "next st, ch 1, turn.": 28,
    "Next Row: Shape armholes: Sl st across 1st 6 sts (all sizes), work in pattern across row to "
    "within last 6 sts (all sizes), sl st in next st, ch 1, turn.": 28,
    "Next Row: Work across row to last 5 sts, sl st in next st, turn.": 35,
    "Next Row: 1 s c in each s c to within last 4 sts, sl st in next st, turn.": 36,
    "Next Row: Working 1 shoulder at a time, work across 12 sts, ch 1, turn.": 12,
    "Next Row: Work on one side at a time, 1 s c in each of next 12 s c, ch 1, turn.": 12,
}


@pytest.mark.parametrize("row", ARMHOLES)
def test_stitches_left_for_an_armhole(row: str) -> None:
    found = count_pattern(parse_pattern(BACK + row))
    assert found.parts[0].rows[-1].count == ARMHOLES[row]
    assert not found.problems


ENDS = [
    "continue in pattern across row; {} sts. Then work 2 rows even.",
    "continue in pattern across the row, {} sts. Then work 2 rows even.",
    "work across remainder of row, ch 1, turn; {} sts. Then work 2 rows even.",
    "1 s c in each s c, ch 1, turn, {} stitches. Then work 2 rows even.",
]


@pytest.mark.parametrize("end", ENDS)
def test_a_bare_total_ends_the_row(end: str) -> None:
    """A total that agrees is held against the row, one that doesn't is told of."""
    text = f"{BACK}Next Row: 2 s c in 1st s c, {end}"
    assert not count_pattern(parse_pattern(text.format(41))).problems
    wrong = count_pattern(parse_pattern(text.format(44)))
    assert [one.printed for one in wrong.problems] == [44]


def test_stitches_of_no_name_are_not_all_there_are() -> None:
    """ "(41 sts)" counts the whole row, not only those that are worked "in pattern"."""
    row = "Next Row: Work in pattern across 1st 38 sts, 2 s c in each of last 2 s c (38 sts)."
    found = count_pattern(parse_pattern(BACK + row))
    assert found.parts[0].rows[-1].verdict is not Verdict.FITS
