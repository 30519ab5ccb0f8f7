"""What is told of a row's last stitch, "the last sc coming in top of turning ch": it was made
before. Half groups at the ends of rows, and groups told by one kind of stitch (common practice, no
source).
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


LAST = (
    "the last sc coming in top of ch 3", "last sc coming in top of turning ch",
    "with last sc in top of ch 3", "the last sc being worked in the turning chain",
    "bringing last sc in top of turning ch", "so that last sc comes in top of turning ch",
    "working last sc in turning ch", "finishing with sc in turning ch",
    "finishing 1 sc in top of turning ch", "ending sc in turning ch",
)  # fmt: skip
FANS = (
    ("7 dc in next ch", "sc in center dc of next fan"),
    ("7 dc in next ch (fan made)", "sc in 4th dc of next fan"),
    ("make a fan of 7 dc in next ch", "sc in center of next fan"),
)


@pytest.mark.parametrize("last", LAST)
def test_fans_with_halves_at_the_ends(last: str) -> None:
    for fan, center in FANS:
        text = (
            f"Ch 26.\nRow 1: Sc in 2nd ch from hook, * sk 3 ch, {fan}, sk 3 ch, sc in next ch; rep "
            f"from * across.\nRow 2: Ch 3, turn, 3 dc in first sc, * {center}, 7 dc in next sc; "
            f"rep from * across, ending with 4 dc in last sc.\nRow 3: Ch 1, turn, sc in first dc, "
            f"* 7 dc in next sc, {center}; rep from * across, {last}.\n"
        )
        assert (fan, *counts_of(text)) == (fan, [25, 25, 25], 0)


def test_loops_and_where_the_last_comes() -> None:
    for last in LAST:
        text = (
            "Ch 24.\nRow 1: Dc in 4th ch from hook and in each ch across. (22 dc)\nRow 2: Ch 1, "
            f"turn, sc in first dc, * ch 5, sk 2 dc, sc in next dc; rep from * across, {last}.\n"
        )
        assert (last, *counts_of(text)) == (last, [22, 8], 0)


def test_stitches_of_a_named_group_are_passed_one_by_one() -> None:
    made = ("5 dc in next ch (shell)", "shell of 5 dc in next ch", "5 dc in next ch, shell made")
    for shell, other in itertools.product(made, ("5 dc in next sc", "shell in next sc")):
        text = (
            f"Ch 26.\nRow 1: Sc in 2nd ch from hook, * sk 2 ch, {shell}, sk 2 ch, sc in next ch; "
            f"rep from * across.\nRow 2: Ch 3, turn, 2 dc in first sc, * sk 2 dc, sc in next dc, "
            f"sk 2 dc, {other}; rep from * across, ending with 3 dc in last sc.\nRow 3: Ch 1, "
            f"turn, sc in first dc, * sk 2 dc, {other}, sk 2 dc, sc in next dc; rep from * across, "
            "working last sc in turning ch.\n"
        )
        assert (shell, other, *counts_of(text)) == (shell, other, [25, 25, 25], 0)
