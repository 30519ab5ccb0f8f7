"""Faults in the first row of a piece: a wrong total of a round worked around a chain, and more
stitches cast on than the row has. Invented pieces; their counts follow by addition.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

OVAL = (
    "Base\nCh 16.\nRnd 1: 2 sc in 2nd ch from hook, sc in next 13 ch, 4 sc in last ch, working on "
    "other side of ch, sc in next 13 ch, 2 sc in same ch as first 2 sc, join. ({total} sc)\n"
    "Rnd 2: Ch 1, sc in each st around, join."
)
SHAWL = "Shawl\nCast on {cast_on} sts.\nRow 1: k1, yo, k1, yo, k1. (5 sts)\nRow 2: purl."


@pytest.mark.parametrize("total", [28, 32, 33, 35, 40])
def test_a_wrong_total_around_a_chain_is_told_of_that_round(total: int) -> None:
    counted = count_pattern(parse_pattern(OVAL.format(total=total)))
    assert [problem.label for problem in counted.problems] == ["Round 1"]


def test_the_right_total_around_a_chain_is_counted() -> None:
    counted = count_pattern(parse_pattern(OVAL.format(total=34)))
    assert not counted.problems
    assert [row.count for row in counted.parts[0].rows][-2:] == [34, 34]


@pytest.mark.parametrize("cast_on", [4, 5, 8])
def test_stitches_cast_on_that_the_first_row_leaves_are_told(cast_on: int) -> None:
    counted = count_pattern(parse_pattern(SHAWL.format(cast_on=cast_on)))
    assert [problem.label for problem in counted.problems] == ["Row 1"]


def test_the_right_cast_on_raises_nothing() -> None:
    assert not count_pattern(parse_pattern(SHAWL.format(cast_on=3))).problems
