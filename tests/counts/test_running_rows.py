"""Crochet rows told in sentences: where one is over, and where it has only begun."""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

BEGUN = [
    "Ch 2 (this doesn't count as a stitch) and turn.",
    "Turn and chain 2.",
    "Ch 1, turn.",
    "With blue, chain one, turn.",
    "Chain 1 and then turn your work.",
]


@pytest.mark.parametrize("begun", BEGUN)
def test_a_row_that_only_turned_goes_on(begun: str) -> None:
    """The chain and the turn before the stitches are no row of their own: all 30 stay on hand."""
    first = "Chain 31.\nRow 1: sc in 2nd ch from hook and in each ch.\n"
    text = f"{first}Next row: {begun} Sc in each st."
    rows = count_pattern(parse_pattern(text)).parts[0].rows
    assert [row.count for row in rows] == [None, 30, 30]


TOTALS = [
    ". You should have 12 sts at the end of this round.", "; 12 sc made.", ". Twelve stitches.",
    " (12 stitches at end of round)",
]  # fmt: skip


@pytest.mark.parametrize("told", TOTALS)
def test_totals_in_running_words(told: str) -> None:
    """The total is read as one: held against the count, and not asked about."""
    found = count_pattern(parse_pattern(f"Rnd 1: 6 sc in magic ring.\nRnd 2: inc in each st{told}"))
    assert found.parts[0].rows[-1].stated == 12
    assert not found.problems
