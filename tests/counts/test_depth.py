"""Brackets and stars in one another, deeper than any hand works: a question, and no time lost."""

from __future__ import annotations

import time

import pytest

from reader.counts.account import count_pattern
from reader.counts.counted import Verdict
from reader.pattern.parser import parse_pattern

RING = "Rnd 1: 60 sc in magic ring.\nRnd 2: "


@pytest.mark.parametrize("deep", [9, 30, 600])
@pytest.mark.parametrize(
    ("begin", "end"),
    [("(sc in next st, ", ") twice"), ("*sc in next st, ", "; rep from * around"), ("(", ")")],
)
def test_too_deep_is_asked_about(deep: int, begin: str, end: str) -> None:
    """Nothing is raised, the row is asked about, and no level doubles the time."""
    began = time.process_time()
    counted = count_pattern(parse_pattern(RING + begin * deep + "inc" + end * deep))
    assert counted.parts[0].rows[1].verdict is Verdict.UNCLEAR
    assert time.process_time() - began < 2


def test_what_is_printed_is_read() -> None:
    """Three levels, the star's and two brackets'."""
    words = "*[(sc, inc) twice, sc in next 4 sts] twice, sc in next 4 sts; rep from * around. (72)"
    counted = count_pattern(parse_pattern(RING + words))
    assert counted.parts[0].rows[1].count == 72
    assert not counted.problems
