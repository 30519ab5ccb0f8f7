"""A miscount leads to where the slip most likely is."""

from __future__ import annotations

import pytest

from reader.plan.find import find_row
from reader.plan.mismatch import (
    Likely,
    Mismatch,
    answered,
    ask,
    compare,
    narrowed,
    start_search,
    step_of,
)
from reader.plan.place import Place
from tests.plan.made import buoy_plan

PLAN = buoy_plan()


def counted(number: int, have: int) -> Mismatch:
    """What `have` stitches mean at the end of a round of the buoy."""
    place = find_row(PLAN, 0, number)
    assert place is not None
    found = compare(PLAN, place, have)
    assert found is not None
    return found


@pytest.mark.parametrize(
    ("number", "have", "likely", "slips"),
    [
        (4, 24, Likely.RIGHT, 0),
        (4, 23, Likely.INCREASE_MISSED, 1),
        (4, 20, Likely.WHOLE_PASS, 1),
        (4, 16, Likely.WHOLE_PASS, 2),
        (4, 25, Likely.INCREASE_EXTRA, 1),
        (6, 19, Likely.DECREASE_MISSED, 1),
        (6, 17, Likely.DECREASE_EXTRA, 1),
        (5, 23, Likely.STITCH, 1),
        (5, 18, Likely.ROW_BELOW, 6),
    ],
)
def test_the_likeliest_slip(number: int, have: int, likely: Likely, slips: int) -> None:
    """(sc 2, inc) x 6 has passes of four; (sc 2, sc2tog) x 6 decreases by one each; round five is
    plain.
    """
    found = counted(number, have)
    assert (found.likely, found.slips) == (likely, slips)


@pytest.mark.parametrize("wrong", range(1, 7))
def test_counting_half_way_finds_the_pass(wrong: int) -> None:
    """An increase missed in any pass is found in at most three counts."""
    found = counted(4, 23)
    search = start_search(found)
    assert search is not None
    questions = 0
    while (stop := ask(found, search)) is not None:
        search = answered(found, search, stop.count - (1 if stop.number >= wrong else 0))
        questions += 1
    assert narrowed(found, search) == (wrong, wrong)
    assert questions <= 3
    step = step_of(found, search, PLAN.parts[0].rows[4])
    assert step is not None
    assert step.passes[0].number == wrong


def test_going_on_shifts_later_counts_and_doubling_rows_double_the_shift() -> None:
    """Round one with seven in place of six: "two in each" makes fourteen of it, and then it stays
    two more.
    """
    assert counted(1, 7).later[:3] == (
        ("Round 2", 12, 14),
        ("Round 3", 18, 20),
        ("Round 4", 24, 26),
    )


def test_mending_is_offered_for_small_differences_only() -> None:
    """One of twenty-four can be made good in the next round, four can not."""
    assert sum(counted(4, 23).mend) == 23
    assert counted(4, 23).gain
    assert not counted(4, 25).gain
    assert counted(4, 20).mend == ()


def test_nothing_is_said_of_rows_without_a_count() -> None:
    """A remark, or nonsense."""
    assert compare(PLAN, Place(0, 0, 0), 5) is None
    assert compare(PLAN, Place(0, 4, 0), -1) is None
