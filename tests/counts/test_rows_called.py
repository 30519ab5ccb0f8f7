"""Rows told by other rows or by another piece, in the wordings that authors use; common practice,
no source. The pieces are invented.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

BUOY = """Buoy
Rnd 1: 6 sc in magic ring (6)
Rnd 2: inc x 6 (12)
Rnd 3: (sc, inc) x 6 (18)
Rnd 4: (sc, dec) x 6 (12)
Fasten off.

Float
{}
Rnd 4: sc in each st around (18)
Rnd 5: (2 sc, inc) x 6 (24)
"""
SAIL = """Sail
Row 1: Ch 11, sc in 2nd ch from hook and in each ch across. (10)
Row 2: Ch 1, turn, inc, sc in each st to last st, inc. (12)
Row 3: Ch 1, turn, sc in each st across. (12)
{}
Fasten off.
"""


def counts_of(text: str) -> list[int | None]:
    counted = count_pattern(parse_pattern(text))
    assert not counted.problems
    return [row.count for part in counted.parts for row in part.rows]


@pytest.mark.parametrize(
    "words",
    [
        "Rounds 1-3: same as buoy.",
        "Rnds 1-3: as for buoy.",
        "Rnd 1-3: like buoy",
        "R1-3: see buoy",
        "Rounds 1 through 3: Identical to the buoy.",
        "Begin as for the buoy: work Rounds 1-3.",
        "Follow buoy rounds 1 - 3.",
        "Start as buoy, Rnds 1-3. (18 sts)",
        "Repeat Rnds 1-3 of Buoy (18 sts).",
        "Make as buoy up to and including Round 3.",
        "Work first three rounds as for buoy (18 sts).",
        "Work same as buoy through Round 3.",
    ],
)
def test_rows_of_another_piece(words: str) -> None:
    assert counts_of(BUOY.format(words)) == [6, 12, 18, 12, 6, 12, 18, 18, 24]


@pytest.mark.parametrize(
    ("words", "counts"),
    [
        ("Repeat Row 3 to Row 6.", [12, 12, 12]),
        ("Repeat Row 3 through Row 6.", [12, 12, 12]),
        ("Do that row 3 more times.", [12, 12, 12]),
        ("That last row three more times.", [12, 12, 12]),
        ("3 more rows like this.", [12, 12, 12]),
        ("Rep row 3 (3x)", [12, 12, 12]),
        ("Keep on repeating rows 2 and 3 till there are 16 stitches.", [14, 14, 16]),
        ("Row 4: As Row 3, inc 1 st at each end. (14)", [14]),
        ("Row 4: As row 3, but inc in first and last st. (14)", [14]),
        ("Row 4: Rep Row 3, increasing at both ends.", [14]),
        ("Row 4: as row 3 decreasing 1 sc at end", [11]),
        ("Rows 4-5: As Row 3, dec 1 st at each end of every row.", [10, 8]),
        ("Rep Row 3, dec 1 st at each end of next 2 rows.", [10, 8]),
        ("Repeat Row 3, dec 1 st at each end of every row until 6 sts remain.", [10, 8, 6]),
        ("Repeat last row, decreasing 1 sc at each end, until 6 sts remain.", [10, 8, 6]),
        ("Repeat row 3 and dec 1 sc at the beginning of every other row 2 times.", [11, 11, 10]),
    ],
)
def test_rows_of_the_same_piece(words: str, counts: list[int]) -> None:
    assert counts_of(SAIL.format(words)) == [10, 12, 12, *counts]


def test_a_total_that_the_quoted_rows_do_not_make_is_told() -> None:
    counted = count_pattern(parse_pattern(BUOY.format("Repeat Rnds 1-3 of Buoy (20 sts).")))
    assert [(one.printed, one.counted) for one in counted.problems][:1] == [(20, 18)]
