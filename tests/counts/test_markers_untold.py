"""Changes at markers whose number is nowhere told are asked about, never guessed."""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.counts.counted import Verdict
from reader.pattern.parser import parse_pattern

BEGUN = "Knitted yoke\n\nCast on 60 sts.\nRow 1: K, placing markers.\n"


@pytest.mark.parametrize(
    "words",
    [
        "Row 2: Inc 1 st before and after each marker.",
        "Row 2: Kfb in st before and after each marker.",
        "Dec 1 st each side of each marker every other row 5 times.",
    ],
)
def test_markers_without_number_are_asked_about(words: str) -> None:
    problems = count_pattern(parse_pattern(BEGUN + words + "\nNext row: K.")).problems
    assert [one.verdict for one in problems] == [Verdict.UNCLEAR]


def test_changes_go_on_as_in_the_row_that_tells_them() -> None:
    """A row that was told stitch by stitch tells how many a later change makes."""
    told = "Row 2: *K to 1 st before marker, kfb, sm, kfb; rep from * 3 times more, k to end.\n"
    goes_on = "Inc 1 st before and after each marker every other row 5 times.\nNext row: K."
    counted = count_pattern(parse_pattern(BEGUN + told + goes_on))
    assert counted.parts[0].rows[-1].count == 108
    assert not counted.problems
