"""A line that tells what is worked around a piece or onto it, right below the last row with no
empty line between: it is none of that row. The pieces are invented.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

CLOTH = """Galley cloth
Ch 21.
Row 1: sc in 2nd ch from hook and in each ch across. (20)
Rows 2-5: ch 1, turn, sc in each st across. (20)
"""
HEADS = ("Edging: ", "Border: ", "Trim: ", "Outer edge: ", "Border - ", "Edging. ", "Strap: ")
WORDS = (
    "20 sc along one side, 3 sc in corner.", "work 20 sc along the top.",
    "(sc, ch 3, sc) in each st.", "sc evenly around.",
)  # fmt: skip


@pytest.mark.parametrize("head", HEADS)
@pytest.mark.parametrize("words", WORDS)
def test_the_rows_before_stay_as_they_are(head: str, words: str) -> None:
    (part, *_) = count_pattern(parse_pattern(CLOTH + head + words)).parts
    assert [row.count for row in part.rows if row.number is not None] == [20] * 5
