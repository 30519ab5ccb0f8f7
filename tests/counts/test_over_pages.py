"""A row that a page's end broke off goes on behind it; what only stands below a row begins anew."""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern
from reader.text.over_pages import brought_together

GAPS = (
    "\n\n", "\n\n\n", "\n\f\n", "\n-----------\n", "\n\n* * *\n\n", "\n[photo 3]\n",
    "\n\n![](mole.jpg)\n\n", "\n(continued on page 4)\n", "\n\nHarbour Mats - 3\n\n",
    "\n© 2021 the harbour mats, for your own use\n",
)
ROWS = (
    "Row 2: K2, yo, knit until|4 sts remain, yo, k4.",
    "Row 2: K2, yo,|k to last 2 sts, yo, k2.",
    "Row 2: K2, yo, (k1,|k1) 8 times, yo, k2.",
    "Row 2: K2, yo, knit to the|last 2 sts, yo, k2.",
    "Row 2: K2, yo, k to last|2 sts, yo, k2.",
)


def _counts(text: str) -> list[int | None]:
    told = count_pattern(parse_pattern(text), 0)
    return [row.count for part in told.parts for row in part.rows if row.label != "Start"]


@pytest.mark.parametrize("row", ROWS)
@pytest.mark.parametrize("gap", GAPS)
def test_a_row_goes_on_over_a_pages_end(gap: str, row: str) -> None:
    text = f"Mat\n\nCast on 20 sts.\nRow 1: Knit.\n{row}\nRow 3: Knit across all sts.\n"
    told = text.replace("|", gap)
    assert len(brought_together(told)) == len(told)
    assert _counts(told) == [20, 20, 22, 22]


def test_a_row_that_ends_without_a_stop_is_no_broken_one() -> None:
    text = "Row 1: k 20\n\nrow 2: k to end\n\nrow 3: purl\n\nthen sew the sides"
    assert brought_together(text) == text


def test_a_line_may_end_before_the_number_of_another_row() -> None:
    text = (
        "Mat\n\nCast on 20 sts.\nRow 1: K 2, yo, k to end.\nRow 2: k.\nRow 3: as\nrow 1.\n"
        "Row 4: k\n3, yo, k to end. Row 5: repeat\nrow 2."
    )
    assert _counts(text) == [20, 21, 21, 22, 23, 23]
