"""How far a list is repeated before a row's last stitches, in many words (invented; the counts
follow from the numbers: so many passes, and what stands before and behind).
"""

from __future__ import annotations

from itertools import product

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

FAR = [
    "over and over till the last {n}", "until the last {n} sts", "up to the last {n} sts",
    "as far as the last {n} sts", "to within {n} of the end", "to last {n} sts",
    "until {n} remain", "until {n} sts are left", "till you have {n} left",
    "all along to the last {n}", "across to last {n} sts", "to {n} before end",
    "to {n} sts from the end", "until there are {n} sts left", "until only {n} sts remain",
]  # fmt: skip
LISTS = [
    "*{b}* {far}, {e}", "({b}) {far}, {e}", "*{b}; rep from * {far}, {e}",
    "*{b}*, repeat between *s {far}, {e}", "({b}) {far} then {e}", "rep ({b}) {far}, {e}",
    "repeat *{b}* {far}, {e}", "*{b} {far}, {e}",
]  # fmt: skip
KNITTED = [("k3, ", "k1, p2", 3, "k3", 3), ("k2, ", "yo, k2tog", 2, "k2", 2)]
CROCHETED = [
    ("", "sc in next 3 sts, 2 sc in next st", 4, "sc in each of last 3 sts", 3),
    ("sc in next st, ", "sc in next 2 sts, sc2tog", 4, "sc in last 2 sts", 2),
]
PASSES = 6


def counts(text: str) -> list[int | None]:
    """What lies on hand after each numbered row."""
    counted = count_pattern(parse_pattern(text, "", ""))
    return [row.count for part in counted.parts for row in part.rows if row.number]


@pytest.mark.parametrize("far", FAR)
@pytest.mark.parametrize("listed", LISTS)
def test_knitted_lists_leave_what_they_take(far: str, listed: str) -> None:
    for before, body, takes, end, n in KNITTED:
        row = before + listed.format(b=body, far=far.format(n=n), e=end)
        cast_on = n + PASSES * takes + n
        text = f"Mooring cloth\nCast on {cast_on} sts.\nRow 1: K.\nRow 2: {row}.\nRow 3: K.\n"
        assert counts(text) == [cast_on] * 3, row


@pytest.mark.parametrize("far", FAR)
def test_crocheted_lists_change_by_one_a_pass(far: str) -> None:
    for listed, (before, body, takes, end, n) in product(LISTS[:6], CROCHETED):
        row = before + listed.format(b=body, far=far.format(n=n), e=end)
        below = bool(before) + PASSES * takes + n
        made = below + (PASSES if "2 sc in next" in body else -PASSES)
        text = (
            f"Mooring mat\nCh {below + 1}.\nRow 1: Sc in 2nd ch from hook and in each ch across.\n"
            f"Row 2: Ch 1, turn, {row}.\nRow 3: Ch 1, turn, sc in each st across.\n"
        )
        assert counts(text) == [below, made, made], row
