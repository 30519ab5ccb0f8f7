"""Places: next and previous undo each other, rows and parts are found by what makers say."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from reader.plan.find import (
    distance,
    exists,
    find_part,
    find_row,
    first_place,
    nearest,
    next_place,
    part_phrases,
    previous_place,
    row_numbers,
    row_start,
    step_at,
)
from reader.plan.place import Place
from reader.plan.step import Grain, PlanPart
from reader.plan.unroll import make_plan
from tests.plan.made import buoy_plan, pattern

PLAN = buoy_plan()
ALL = []
_at = first_place(PLAN)
while _at is not None:
    ALL.append(_at)
    _at = next_place(PLAN, _at)


def test_walking_reaches_every_step_in_order() -> None:
    """Next from the start visits each step once, in the order of places, and ends at the last."""
    steps = sum(len(row.groups) for part in PLAN.parts for row in part.rows)
    assert len(ALL) == len(set(ALL)) == steps
    assert sorted(ALL) == ALL
    assert next_place(PLAN, ALL[-1], Grain.GROUP) is None


@given(st.sampled_from(ALL[:-1]))
def test_previous_undoes_next(place: Place) -> None:
    """One step on and one back is where one was."""
    after = next_place(PLAN, place)
    assert after is not None
    assert previous_place(PLAN, after) == place


@pytest.mark.parametrize("grain", list(Grain))
def test_previous_undoes_next_at_every_grain(grain: Grain) -> None:
    """From the beginning of a row or phrase, too."""
    place = first_place(PLAN)
    while place is not None:
        after = next_place(PLAN, place, grain)
        assert after is None or previous_place(PLAN, after, grain) == place
        place = after


@given(st.sampled_from(ALL), st.sampled_from(list(Grain)))
def test_bigger_steps_cover_what_is_skipped(place: Place, grain: Grain) -> None:
    """What is read covers exactly the steps up to the next place, from mid-row as well."""
    step = step_at(PLAN, place, grain)
    after = next_place(PLAN, place, grain) or Place(len(PLAN.parts), 0, 0)
    assert step.place == place
    assert step.covers == sum(1 for other in ALL if place <= other < after)


@given(st.sampled_from(ALL), st.sampled_from(ALL))
def test_distance_counts_steps_both_ways(here: Place, there: Place) -> None:
    """The number of "next" between two places."""
    assert distance(PLAN, here, there) == ALL.index(there) - ALL.index(here)


@given(st.builds(Place, st.integers(0, 5), st.integers(0, 30), st.integers(0, 12)))
def test_a_saved_place_that_is_gone_finds_the_nearest_before(place: Place) -> None:
    """Never after the saved one, and always one that exists."""
    found = nearest(PLAN, place)
    assert found is not None
    assert exists(PLAN, found)
    assert found <= place


def test_rows_are_found_by_number() -> None:
    """Round 6 of the second buoy; numbers that do not exist are not found."""
    found = find_row(PLAN, 1, 6)
    assert found is not None
    assert PLAN.parts[1].rows[found.row].label == "Round 6"
    assert find_row(PLAN, 1, 9) is None
    assert find_row(PLAN, 9, 1) is None
    assert row_numbers(PLAN, 0) == tuple(range(1, 9))
    assert row_start(Place(0, 3, 4)) == Place(0, 3, 0)


@pytest.mark.parametrize(
    ("said", "index"),
    [
        ("buoy", 0),
        ("the second buoy", 1),
        ("buoy two", 1),
        ("buoys number 2", 1),
        ("finishing", 2),
        ("sleeve", None),
        ("third buoy", None),
        ("", None),
    ],
)
def test_parts_are_found_by_name_and_copy(said: str, index: int | None) -> None:
    """As a maker says it."""
    assert find_part(PLAN, said) == index


def test_every_phrase_for_a_part_finds_it() -> None:
    """What is offered to be said is understood."""
    phrases = part_phrases(PLAN)
    assert phrases == ("first buoy", "second buoy", "finishing")
    assert [find_part(PLAN, phrase) for phrase in phrases] == [0, 1, 2]


def test_the_closest_name_wins() -> None:
    """ "Left fin" is not "left fin lining", and "fin" alone is the shorter of the two."""
    part = PLAN.parts[0]
    names = ("Left fin lining", "Left fin", "Right fin")
    parts = tuple(PlanPart(name, 1, 1, part.rows) for name in names)
    plan = replace(PLAN, parts=parts)
    assert find_part(plan, "left fin") == 1
    assert find_part(plan, "right") == 2
    assert find_part(plan, "lining") == 0


def test_an_empty_plan_has_no_places() -> None:
    """A text without rows or finishing."""
    plan = replace(make_plan(pattern(), "x"), parts=())
    assert first_place(plan) is None
    assert nearest(plan, Place(0, 0, 0)) is None
