"""Gauge, yarn, time and miscounts in spoken words."""

from __future__ import annotations

import pytest

from reader.plan.gauge import Gauge, check_gauge
from reader.plan.mismatch import ask, compare, start_search
from reader.plan.place import Place
from reader.plan.step import Reading
from reader.plan.yarn import ColourShare, YarnLeft
from reader.wording.gathering import say_missing, say_weight
from reader.wording.gauge_words import say_finished, say_gauge
from reader.wording.mismatch_words import say_choice, say_found, say_mismatch, say_stop
from reader.wording.time_words import say_time
from reader.wording.yarn_words import say_share, say_yarn
from tests.plan.made import buoy_plan

PLAN = buoy_plan()
READING = Reading()


@pytest.mark.parametrize(
    ("seconds", "said"),
    [
        (20, "less than a minute"),
        (70, "about a minute"),
        (200, "about three minutes"),
        (1500, "about twenty-five minutes"),
        (3500, "about an hour"),
        (5400, "about an hour and a half"),
        (9000, "about two hours and a half"),
        (20000, "about six hours"),
    ],
)
def test_durations_are_no_finer_than_they_deserve(seconds: float, said: str) -> None:
    """Rounded as a person would."""
    assert say_time(seconds) == said


def test_a_gauge_says_what_to_try_and_how_it_comes_out() -> None:
    """Both numbers, the tool, the piece."""
    said = say_gauge(check_gauge(Gauge(18), Gauge(20), "crochet", 4.0), "crochet")
    assert said == (
        "You have twenty stitches over ten centimetres, and the pattern has eighteen. So your "
        "stitches are a "
        "little too small. Try a hook one size larger, four point five millimetres, in the U S "
        "size seven. "
        "As it is, the piece comes out about ten percent narrower."
    )
    assert (
        say_gauge(check_gauge(Gauge(18), Gauge(18), "crochet", 4.0), "crochet")
        == "Your gauge fits the pattern."
    )
    assert say_finished(15.2) == "about fifteen centimetres"
    assert say_finished(15.2, "in") == "about six inches"


def test_yarn_says_whether_it_lasts() -> None:
    """Close calls are called close."""
    assert say_share(ColourShare("red", 1, 3), READING) == "Of the red, about a third is worked."
    assert say_yarn(YarnLeft(30, 40), "red", READING).startswith("The red will probably not last")
    assert "close" in say_yarn(YarnLeft(41, 40), "", READING)
    assert say_yarn(YarnLeft(60, 40), "A", READING).startswith("The colour A should last")


def test_a_miscount_is_talked_through() -> None:
    """Both numbers, the likeliest slip, where to count, and the choices."""
    found = compare(PLAN, Place(0, 4, 0), 23)
    assert found is not None
    assert say_mismatch(found) == (
        "Twenty-three: there should be twenty-four, so one too few. "
        "Most likely an increase was missed."
    )
    search = start_search(found)
    assert search is not None
    stop = ask(found, search)
    assert stop is not None
    assert say_stop(found, stop) == (
        "Count from the start of the round to the end of the third pass. There should be twelve. "
        "How many "
        "are there?"
    )
    assert say_found(found, search) == "The slip is between the first and the sixth pass."
    assert "Or increase once in the next round" in say_choice(found)
    right = compare(PLAN, Place(0, 4, 0), 24)
    assert right is not None
    assert (say_mismatch(right), say_choice(right)) == ("Right: twenty-four stitches.", "")


def test_the_gathering_list_is_read_and_ticked_off() -> None:
    """What is missing by name."""
    assert say_missing(PLAN, frozenset(range(5)), READING) == "You have everything."
    assert (
        say_missing(PLAN, frozenset((0, 1, 2, 4)), READING)
        == "One thing is missing: stitch marker."
    )
    assert say_weight(PLAN.gather[0]).startswith("That is weight number four, medium")
