"""What begins the work, and what only tells how it goes; common practice, no source."""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.beginnings import begins_work
from reader.pattern.parser import parse_pattern

BEGIN = (
    "Chain 12, join.",
    "With rope colour ch 6 and join",
    "With No. 3.50 hook make 45 ch fairly loosely.",
    "Using 4 mm hook make 48 [52:56] ch.",
    "Start with six stitches in a ring",
    "Net, plate 2.--Make a chain of 9 stitches, and unite it.",
    "7 sc into an adjustable ring.",
    "Commence at the mast with 62 (70) ch.",
    "We start with a magic ring and that is that.",
    "6 (ring)",
    "Pick up 40 stitches along the hem.",
)
TELL = (
    "Rounds are joined with a sl st. Ch 3 counts as a dc throughout.",
    "The starting ch 2 is not counted; turn after every row.",
    "Fits a small buoy. Turning chains (1 ch for dc, 2 ch for tr) are never counted.",
    "Worsted cotton, H hook. Ch 3 = 1 dc, ch 4 = dc + ch 1.",
    "If you can make a chain you can make this net.",
    "Every round begins with 1 chain which is not counted and closes with 1 slip stitch.",
    "The tide mark needs 14 stitches, a multiple of 14 plus the beginning chain.",
    "Two balls of cotton, a steel hook and a bone ring.",
)


@pytest.mark.parametrize("words", BEGIN)
def test_what_begins_the_work(words: str) -> None:
    assert begins_work(words)


@pytest.mark.parametrize("words", TELL)
def test_what_only_tells(words: str) -> None:
    assert not begins_work(words)


@pytest.mark.parametrize("words", TELL)
def test_no_row_is_made_of_it(words: str) -> None:
    text = f"Harbour mat\n\n{words}\n\nRnd 1: 6 sc in magic ring. (6)\nRnd 2: 2 sc in each. (12)\n"
    counted = count_pattern(parse_pattern(text))
    rows = [row.count for part in counted.parts for row in part.rows]
    assert rows == [6, 12]
