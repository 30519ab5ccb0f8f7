"""Rows said to form the pattern, and then gone on with (invented)."""

from __future__ import annotations

from itertools import product

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

ROWS = ["These two rows", "These 2 rows", "The last 2 rows", "Rows 1 and 2", "Rows 1-2"]
FORM = ["form the pattern.", "are the whole pattern.", "now form the patt.", "make the pattern;"]
GO = ["Repeat", "Repeat them", "Carry on", "Continue in pattern", "Keep going with them", "Rep"]
UNTIL = ["until 36 sts remain", "until there are 36 sts", "until 36 stitches are left"]


@pytest.mark.parametrize("rows", ROWS)
@pytest.mark.parametrize("go", GO)
def test_what_is_said_of_them_is_no_row(rows: str, go: str) -> None:
    for form, until in product(FORM, UNTIL):
        text = (
            "Mooring cloth\nCast on 41 sts.\nRow 1: Knit.\nRow 2: K1, k2tog, knit to end.\n"
            f"{rows} {form} {go} {until}.\nRow 11: Knit.\n"
        )
        counted = count_pattern(parse_pattern(text, "", ""))
        found = [row.count for part in counted.parts for row in part.rows if row.number]
        assert found == [41, 40, 40, 39, 39, 38, 38, 37, 37, 36, 36], text
