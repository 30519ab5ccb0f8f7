"""Granny rounds whose chain between the groups is told once: common practice, no source. Four
corners of two groups of three, and a group more on each side in each round: 12, 24, 36.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

BEGUN = "US terms.\nCh 4, join to form a ring.\n"
FIRST = "Ch 3, 2 dc in ring, ch 2, (3 dc, ch 2) 3 times, join."
SECOND = (
    "(3 dc, ch 2, 3 dc) in each ch-2 sp, ch 1 between",
    "in each corner space work 3 dc, ch 2, 3 dc, with ch 1 between corners",
    "work (3 dc, ch 2, 3 dc) in every space, ch 1 between groups",
    "3 dc, ch 2, 3 dc in each corner, ch 1 along each side",
    "[3 dc, ch 2, 3 dc] in each sp around, chaining 1 between",
    "(3 dc, ch 2, 3 dc, ch 1) in each corner",
)
THIRD = (
    "*(3 dc, ch 2, 3 dc) in next corner, ch 1, 3 dc in next ch-1 sp, ch 1; rep from * around, join",
    "(3 dc, ch 2, 3 dc) in each corner and 3 dc in each ch-1 sp, ch 1 between groups",
    "3 dc in each ch-1 sp, (3 dc, ch 2, 3 dc) in each corner sp, with ch 1 between",
    "in each corner work 3 dc, ch 2, 3 dc; in each side space work 3 dc; ch 1 between all groups",
)


def counts(*rounds: str) -> list[int | None]:
    """The rounds counted, none of them asked about."""
    rows = "\n".join(f"Rnd {n}: {words}" for n, words in enumerate(rounds, 1))
    counted = count_pattern(parse_pattern(BEGUN + rows))
    assert counted.problems == ()
    return [one.count for part in counted.parts for one in part.rows if one.number is not None]


@pytest.mark.parametrize("second", SECOND)
def test_corners_with_a_chain_between(second: str) -> None:
    assert counts(FIRST, second, THIRD[0]) == [12, 24, 36]


@pytest.mark.parametrize("third", THIRD)
def test_sides_with_a_chain_between(third: str) -> None:
    assert counts(FIRST, SECOND[-1], third, "ch 1, sc in each dc around") == [12, 24, 36, 36]


@pytest.mark.parametrize(
    "closing",
    [
        "hdc in top of ch 3", "ch 1, sc in top of ch 3", "join with hdc in top of ch 3",
        "hdc in 3rd ch of beg ch-3", "ch 1, sc in first dc to form corner sp",
        "hdc in top of ch-3 (counts as last ch-2 sp)",
    ],
)  # fmt: skip
def test_a_short_stitch_that_closes_the_round_is_none_of_it(closing: str) -> None:
    first = f"Ch 3 (counts as dc), 2 dc in ring, [ch 2, 3 dc in ring] 3 times, {closing}."
    second = (
        "ch 3, 2 dc in same sp, ch 1, *(3 dc, ch 2, 3 dc) in next sp, ch 1; rep from * 2 more "
        f"times, 3 dc in first sp, {closing}."
    )
    assert counts(first, second, "ch 1, sc in each dc around") == [12, 24, 24]
