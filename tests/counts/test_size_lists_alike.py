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


@pytest.mark.parametrize("mark", ["-", "/", " - ", " / ", ":", "–", " – ", " --- ", " // "])
def test_marks_between_sizes_are_as_good_as_brackets(mark: str) -> None:
    """Three sizes, row by row."""
    marked = re.sub(
        r"(\d+|S) \(([^()]+)\)", lambda m: m[1] + mark + m[2].replace(", ", mark), JUMPER
    )
    assert counts_of(marked) == counts_of(JUMPER)
    assert counts_of(JUMPER)[2][-1] == 58


SOCK = """BOAT SOCK (two sizes: child, sailor)

Cuff: CO 48, 60. k2, p2, 10 rounds.
Dec A: *k6, k2tog* 6, 7 times, k 0, 4: 42, 53.
Waist: k 20 rounds.
Toe: dec 2 in every round 4, 5 times: 34, 43. Then 16, 20 by one round of k2tog.
"""


def test_pairs_parted_by_commas_alone_are_two_sizes() -> None:
    """Where the piece begins with a pair and others follow; lettered decreases are labels."""
    assert [counts[0] for counts in counts_of(SOCK)] == [48, 60]
    assert 42 in counts_of(SOCK)[0]
    assert 53 in counts_of(SOCK)[1]


ALTERNATIVES = """SAIL BAG, small or big

Base: cast on 21 or 25. Knit 4 or 6 rows.
Row 1: k 10 or 12, m1, k to end: 22 or 26.
Row 2: k 11 or 13, m1, k to end: 23 or 27.
Work 30 or 36 rows. Bind off 3 or 5 at the beginning of the next row: 20 or 22.
"""


def test_alternatives_with_or_are_two_sizes() -> None:
    """ "21 or 25": so many of them are no choice of the maker's."""
    small, big = counts_of(ALTERNATIVES)
    assert (small[0], small[-1]) == (21, 20)
    assert (big[0], big[-1]) == (25, 22)


def test_a_waist_is_no_stitch() -> None:
    """A piece whose name ends as the short word for a stitch does is worked all the same."""
    for name in ("Waist", "Wrist", "Vest", "Chest"):
        assert counts_of(f"{name}: CO 40 sts. K 6 rows.\nTail: k2tog across. 20")[0][0] == 40
