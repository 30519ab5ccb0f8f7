"""Stars that stand between rows: worked again from there, or up to there in another piece."""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

SHOE = (
    "FIRST SHOE\nCast on 20 sts. Knit 4 rows. ** Dec 1 st each end of next row. **\n"
    "K2tog across.\n"
)
TO_STAR = "SECOND SHOE\nWork as first shoe to **. Cast off.\n"


def counts(text: str) -> list[int | None]:
    """The counts of all rows, equal ones behind each other once."""
    found: list[int | None] = []
    for part in count_pattern(parse_pattern(text)).parts:
        for row in part.rows:
            if found[-1:] != [row.count]:
                found.append(row.count)
    return found


@pytest.mark.parametrize(
    "again",
    [
        "**Knit 2 rows. Inc 1 st each end of next row. Repeat from ** twice more.",
        "*Knit 2 rows. Inc 1 st each end of next row.* Repeat from * to * twice more.",
    ],
)
def test_rows_behind_a_star_are_worked_again(again: str) -> None:
    assert counts(f"STRAP\nCast on 20 sts. {again}\n") == [20, 22, 24, 26]


def test_another_piece_is_worked_up_to_the_star() -> None:
    assert counts(SHOE + TO_STAR) == [20, 18, 9, 20, 0]
