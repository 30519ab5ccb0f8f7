"""Pace is learned from moves, not from pauses."""

from __future__ import annotations

import pytest

from reader.plan.find import step_at
from reader.plan.pace import (
    ENOUGH,
    Pace,
    learn,
    part_left_s,
    piece_left_s,
    row_left_s,
    seconds_a_stitch,
)
from reader.plan.place import Place
from tests.plan.made import buoy_plan

PLAN = buoy_plan()
UNKNOWN = Pace()
STEP = step_at(PLAN, Place(0, 4, 0))
"""Single crochet in the next two stitches, increase: four stitches."""


def worked(seconds: float, times: int, pace: Pace = UNKNOWN) -> Pace:
    """The pace after the same step so often at so many seconds."""
    for _ in range(times):
        pace = learn(pace, STEP, seconds)
    return pace


def test_nothing_is_told_before_it_is_known() -> None:
    """The first few steps teach and say nothing."""
    assert seconds_a_stitch(worked(12, ENOUGH - 1), "sc") is None
    assert seconds_a_stitch(worked(12, ENOUGH), "sc") is not None


def test_a_pause_and_a_slip_of_the_key_teach_nothing() -> None:
    """A telephone call, a double press and an impossible time leave the pace as it was."""
    pace = worked(12, 8)
    for seconds in (400.0, 60.0, 0.5, 0.0, -3.0):
        assert learn(pace, STEP, seconds) == pace


def test_a_change_of_speed_is_followed() -> None:
    """Slower by half: after a while the estimate is there."""
    before = seconds_a_stitch(worked(12, 10), "sc")
    after = seconds_a_stitch(worked(18, 30, worked(12, 10)), "sc")
    assert before is not None
    assert after == pytest.approx(before * 1.5, rel=0.02)


def test_times_left_add_up() -> None:
    """Twice the pace is twice the time; the row ends before the part, the part before the piece."""
    slow, fast = worked(24, 10), worked(12, 10)
    place = Place(0, 4, 2)
    assert row_left_s(slow, PLAN, place) == pytest.approx(2 * row_left_s(fast, PLAN, place))
    row, part, piece = (f(fast, PLAN, place) for f in (row_left_s, part_left_s, piece_left_s))
    assert row < part < piece
    assert row == pytest.approx(4 * 12, rel=0.01)


def test_an_unseen_kind_goes_by_the_seen_ones() -> None:
    """A maker twice as slow at single crochet as the first guess is taken to be so at double
    crochet too.
    """
    quick, slow = worked(12, 8), worked(24, 8)
    one, two = seconds_a_stitch(quick, "dc"), seconds_a_stitch(slow, "dc")
    assert one is not None
    assert two == pytest.approx(2 * one)


def test_steps_quicker_than_any_hand_teach_nothing_from_the_first_on() -> None:
    """Who hurries through the first steps to look around has not shown a pace. The quickest knitter
    on record makes a stitch in half a second (published record, from memory)."""
    hurried = worked(0.4 * 4, 6)
    assert hurried == UNKNOWN
    assert seconds_a_stitch(worked(20, ENOUGH, hurried), "sc") == pytest.approx(5.0, rel=0.1)
