"""Sizes told with any mark between their numbers are counted as those in brackets are."""

import re

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

JUMPER = """Harbour jumper
Sizes: S (M, L)
Cast on 60 (72, 84) sts.
Row 1: *K2, p2; rep from * to end.
Rows 2 to 8: As row 1.
Row 9: K 10 (12, 14), *k2tog, k 8 (10, 12); rep from * to end. [55 (67, 79) sts]
Row 10: P.
Row 11: K 5 (6, 7), inc 1, k to end - 56 (68, 80) sts.
Work 10 (12, 14) rows in st st.
Bind off 4 (5, 6) sts at beg of next 2 rows. 48 (58, 68) sts.
Dec 1 st each end of next and every alt row 3 (4, 5) times. 42 (50, 58) sts rem.
"""


def counts_of(text: str) -> list[list[int | None]]:
    """For each size, the stitches after each row."""
    pattern = parse_pattern(text)
    return [
        [row.count for part in count_pattern(pattern, size).parts for row in part.rows]
        for size in range(len(pattern.sizes))
    ]


@pytest.mark.parametrize("mark", ["-", "/", " - ", " / ", ":", "–", " – "])
def test_marks_between_sizes_are_as_good_as_brackets(mark: str) -> None:
    """Three sizes, row by row."""
    marked = re.sub(
        r"(\d+|S) \(([^()]+)\)", lambda m: m[1] + mark + m[2].replace(", ", mark), JUMPER
    )
    assert counts_of(marked) == counts_of(JUMPER)
    assert counts_of(JUMPER)[2][-1] == 58
