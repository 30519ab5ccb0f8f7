"""Rows as other hands tell them: a row called back by what was done in it, the first stitch of a
foundation by where it goes, a change at both ends told twice, a total for each of several rows:
common practice, no source. The texts are invented.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

START = "US terms. sc = single crochet\n\nBuoy\n"
FIVE = "Row 1: ch 6, sc in 2nd ch from hook and in each ch across. 5 sc.\n"
CALLS = (
    "exactly what you did for Row 2", "what you did in Row 2", "do what you did for Row 2 again",
    "exactly as you did for Row 2", "do as we did in Row 2", "the very same as Row 2",
    "all the same as Row 2", "no different from Row 2", "every one of them like Row 2",
    "same thing as Row 2", "same again as Row 2", "a copy of Row 2", "copies of Row 2",
    "nothing but Row 2", "all worked like Row 2",
)  # fmt: skip
FIRSTS = (
    "Your first double goes into the fourth chain from the hook, and then it's one double into "
    "every chain that's left.",
    "Your first dc goes in the 4th ch from hook, then dc in each ch across.",
    "The first dc goes into the 4th ch from the hook, the rest one to each chain.",
    "First dc is worked into the 4th ch from hook, then 1 dc in each ch to the end.",
    "Put your first dc in the 4th ch from the hook and then one in each ch.",
    "The first dc sits in the 4th ch from hook, then dc in each ch left.",
    "Your first dc will be in the 4th ch from hook, followed by one dc in each remaining ch.",
)
TOTALS = (
    "You're aiming for 7 sc.", "You are after 7 sc.", "You want 7 sc.", "Aim for 7 sc.",
    "You're looking for 7 sc.",
)  # fmt: skip
CHANGES = (
    "sc, with an inc in the first and an inc in the last st each time",
    "sc, with an inc in the first st and an inc in the last",
    "sc with inc in first st and last st", "sc across, increasing in the first and the last st",
)  # fmt: skip
OF_EACH = (
    "Rows 2-4: {} 7, 9, 11 sc.", "Rows 2-4: {} 7 sc, 9 sc, 11 sc.", "2nd-4th row: {} 7, 9, 11 sc.",
    "Rows 2 to 4: {} 7, 9 and 11 sc.", "Row 2-4 <D>: {} 7, 9, 11 sc.",
)  # fmt: skip


def counts_of(text: str) -> list[int | None]:
    counted = count_pattern(parse_pattern(START + text))
    assert not counted.problems
    return [row.count for part in counted.parts for row in part.rows if row.label != "Start"]


@pytest.mark.parametrize("call", CALLS)
def test_rows_called_by_what_was_done(call: str) -> None:
    grown = "Row 2: inc in first st, sc to end.\n"
    assert counts_of(f"{FIVE}{grown}Rows 3 to 5: {call}.\n") == [5, 6, 7, 8, 9]


@pytest.mark.parametrize("first", FIRSTS)
def test_where_the_first_stitch_goes(first: str) -> None:
    second = "Row 2: ch 3 (counts as dc), dc in each dc across.\n"
    assert counts_of(f"Make 12 chain. {first} Turn.\n{second}") == [10, 10]


@pytest.mark.parametrize("total", TOTALS)
def test_the_total_to_aim_for(total: str) -> None:
    assert counts_of(f"{FIVE}Row 2: inc in first st, sc to last st, inc. {total}\n") == [5, 7]


@pytest.mark.parametrize("change", CHANGES)
def test_a_change_at_both_ends(change: str) -> None:
    assert counts_of(f"{FIVE}Rows 2-3: {change}.\n") == [5, 7, 9]


@pytest.mark.parametrize("told", OF_EACH)
@pytest.mark.parametrize("words", ["sc, inc in first and last st.", "inc, sc to last st, inc."])
def test_a_total_for_each_row(told: str, words: str) -> None:
    assert counts_of(FIVE + told.format(words) + "\n") == [5, 7, 9, 11]
