"""Shaping rows told by how many they are, totals of several sizes behind them, and the rest of a
decrease told by rows. Common practice, no source; numbers by arithmetic.
"""

from __future__ import annotations

import pytest

from reader.app.check import as_json
from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

SLEEVE = (
    "SLEEVE\nSizes: 2 years (4 years, 6 years)\n\nCast on 34 (38, 42) sts.\nRow 1: Knit.\n"
    "Row 2: Purl.\nInc row: K2, m1, knit to last 2 sts, m1, k2.\n{said}\n"
    "Work straight until sleeve measures 20 cm.\n"
)
SAID = [
    "Work this inc row again on every following 6th row until 5 (6, 7) inc rows have been worked "
    "in all.",
    "Repeat this inc row every 6th row until 5 (6, 7) inc rows have been worked.",
    "Work the inc row every 6th row, 5 (6, 7) inc rows in all.",
    "Rep inc row every 6th row 4 (5, 6) times more.",
    "[Work 5 rows, inc row] 4 (5, 6) times.",
]


@pytest.mark.parametrize("said", SAID)
def test_every_size_comes_to_its_stitches(said: str) -> None:
    pattern = parse_pattern(SLEEVE.format(said=said))
    for size, (begun, made) in enumerate(((34, 44), (38, 50), (42, 56))):
        rows = [row.count for part in count_pattern(pattern, size).parts for row in part.rows]
        assert rows[0] == begun
        assert rows[-1] == made


@pytest.mark.parametrize("said", SAID)
def test_a_wrong_total_of_one_size_is_asked_about(said: str) -> None:
    pattern = parse_pattern(SLEEVE.format(said=f"{said} 42 (50, 56) sts."))
    problems = [as_json(count_pattern(pattern, size))["problems"] for size in range(3)]
    assert [len(one) for one in problems] == [1, 0, 0]
    assert "42 stitches are printed, but they come to 44" in problems[0][0]["message"]


def test_rows_and_their_total_are_no_label() -> None:
    text = (
        "VEST\nSizes: 6 months (12 months, 2 years, 4 years)\n\nCast on 16 (17, 17, 19) sts.\n"
        "Row 1: knit.\nDec 1 st at neck edge on next 4 (5, 4, 4) rows. 12 (12, 13, 15) sts.\n"
    )
    for size, made in enumerate((12, 12, 13, 15)):
        rows = [row for part in count_pattern(parse_pattern(text), size).parts for row in part.rows]
        assert rows[-1].count == made
        assert len(rows) == 2 + (4, 5, 4, 4)[size]


def test_the_words_of_each_size_behind_one_label() -> None:
    text = (
        "CAP\nSizes: Toddler (Child, Adult)\n\nRnd 1: 10 hdc in ring. 10 (10, 10) hdc.\n"
        "Rnd 2: Ch 2, 2 hdc in each st around, join. 20 (20, 20) hdc.\n"
        "Rnd 3: Toddler: ch 2, hdc in each st around, join.\n"
        "Child and Adult: ch 2, [hdc, 2 hdc in next st] 10 times, join. 20 (30, 30) hdc.\n"
        "Rnd 4: Ch 2, hdc in each st around, join. 20 (30, 30) hdc.\n"
    )
    for size, made in enumerate((20, 30, 30)):
        rows = [row.count for part in count_pattern(parse_pattern(text), size).parts
                for row in part.rows]  # fmt: skip
        assert rows == [10, 20, made, made]
