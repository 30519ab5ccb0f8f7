"""With how many stitches a knitted piece begins, in many words (invented)."""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

BEGUN = [
    "Cast on, loosely, 40 sts.", "Using a knit cast-on, put 40 sts on the needle.",
    "Begin on 40 sts.", "You need 40 sts.", "Cast on an even number of sts (I used 40).",
    "Cast on a multiple of 4: 40 sts.", "Cast on a multiple of 4 sts (40 shown).",
    "Worked over 40 sts.", "Cast on to one needle 40 sts.", "To start: 40 sts.",
    "Go with 40 sts.", "Remove the waste yarn; 40 sts on 2 needles.", "Commence with 40 sts.",
    "Place 40 sts on the needle.", "With A, cast on 40.", "Start by casting on 40 stitches.",
    "40 sts on the needle.", "40 sts.", "Using the long tail method cast 40 stitches on.",
    "Provisional cast on: 40 sts.", "Cast on forty.", "Cuff: Cast on 40 sts.", "cast on40 sts",
]  # fmt: skip
ROWS = [
    ("Row 1: Knit.\nRow 2: *K2, p2; rep from * to end.\nRow 3: K2tog, k to end.\n", [40, 40, 39]),
    ("R1 k\nR2 p\nR3 k1, k2tog, k to end\n", [40, 40, 39]),
]
HEADS = [
    "", "Harbour cloth\n", "HARBOUR CLOTH\nYarn: any. Needles: 4 mm.\nGauge: 22 sts = 10 cm.\n\n",
]


@pytest.mark.parametrize("begun", BEGUN)
@pytest.mark.parametrize("head", HEADS)
def test_the_first_row_lies_over_as_many(begun: str, head: str) -> None:
    for rows, counts in ROWS:
        counted = count_pattern(parse_pattern(f"{head}{begun}\n{rows}", "", ""))
        found = [row.count for part in counted.parts for row in part.rows if row.number]
        assert found == counts, begun
