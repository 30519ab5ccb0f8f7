"""Two sizes, of which words say that the second stands in brackets. The pieces are invented."""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

ROWS = """
Ch 41 (45). 1 s c in 2nd ch from hook, 1 s c in each remaining ch.
Row 2: Ch 1, turn, 1 s c in each of the next 40 (44) s c.
"""


@pytest.mark.parametrize(
    "told",
    [
        "Directions are for the small buoy. Changes for large size are in parentheses.",
        "Directions are written for size 10. Figures for size 12 in parentheses.",
        "Instructions are for medium length. Changes for long length are in parentheses.",
        "The larger size is given in brackets.",
        "Figures in ( ) are for the large size.",
        "Small size. Numbers in brackets refer to large size.",
    ],
)
def test_the_second_size_stands_in_brackets(told: str) -> None:
    read = parse_pattern(told + ROWS)
    assert len(read.sizes) == 2
    rows = count_pattern(read, size=1).parts[0].rows
    assert [row.count for row in rows if row.number is not None] == [44, 44]


def test_totals_in_brackets_are_no_size() -> None:
    told = "Size: 10 inches. Numbers in parentheses are stitch counts.\nCh 41.\nRow 1: 40 s c (40)."
    assert len(parse_pattern(told).sizes) == 1
