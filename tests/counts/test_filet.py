"""Nets of squares: their rows close over the squares below, and what is told of them is no row."""

from __future__ import annotations

from pathlib import Path

from reader.counts.account import count_pattern
from reader.counts.counted import Verdict
from reader.pattern.parser import parse_pattern

BOOKMARK = Path(__file__).parents[1] / "examples" / "pieces" / "filet-bookmark.txt"


def problems_of(text: str) -> list[tuple[Verdict, str]]:
    """What is told of a text: the kind and the row."""
    return [(one.verdict, one.label) for one in count_pattern(parse_pattern(text)).problems]


def test_a_net_that_closes_is_not_asked_about() -> None:
    """Every row of the bookmark has six squares."""
    text = BOOKMARK.read_text(encoding="utf-8")
    pattern = count_pattern(parse_pattern(text))
    assert problems_of(text) == []
    assert [row.count for row in pattern.parts[0].rows] == [None, 7, 15, 11, 15, 7, 19]


def test_a_square_too_few_is_asked_about() -> None:
    """Five squares over six: the last stitch goes over a square that no word works."""
    text = BOOKMARK.read_text(encoding="utf-8").replace("1 bl, 2 sp, 1 bl", "1 bl, 1 sp, 1 bl")
    assert problems_of(text)[0] == (Verdict.UNCLEAR, "Row 3")
