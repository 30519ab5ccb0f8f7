"""Brackets and stars in one another, deeper than any hand works: a question, and no time lost."""

from __future__ import annotations

import time

import pytest

from reader.counts.account import count_pattern
from reader.counts.counted import Verdict
from reader.pattern.parser import parse_pattern

RING = "Rnd 1: 60 sc in magic ring.\nRnd 2: "


NESTS = [("(sc in next st, ", ") twice"), ("*sc in next st, ", "; rep from * around"), ("(", ")")]


def seconds(deep: int, begin: str, end: str) -> float:
    """How long so many levels take; each is asked about, and nothing is raised."""
    began = time.process_time()
    counted = count_pattern(parse_pattern(RING + begin * deep + "inc" + end * deep))
    assert counted.parts[0].rows[1].verdict is Verdict.UNCLEAR
    return time.process_time() - began


@pytest.mark.parametrize("deep", [9, 30])
@pytest.mark.parametrize(("begin", "end"), NESTS)
def test_too_deep_is_asked_about(deep: int, begin: str, end: str) -> None:
    seconds(deep, begin, end)


@pytest.mark.parametrize(("begin", "end"), NESTS)
def test_no_level_doubles_the_time(begin: str, end: str) -> None:
    """Twice the levels, and no more than ten times as long: a ratio, since machines differ."""
    seconds(300, begin, end)
    assert seconds(600, begin, end) < 10 * seconds(300, begin, end)


def test_what_is_printed_is_read() -> None:
    """Three levels, the star's and two brackets'."""
    words = "*[(sc, inc) twice, sc in next 4 sts] twice, sc in next 4 sts; rep from * around. (72)"
    counted = count_pattern(parse_pattern(RING + words))
    assert counted.parts[0].rows[1].count == 72
    assert not counted.problems
