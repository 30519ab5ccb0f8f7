"""Increases and decreases that a bracket explains are worked once (invented)."""

from __future__ import annotations

from itertools import product

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

RAISED = [
    "2 sc in same st", "2 sc in the same st", "two sc in one stitch", "= 2 sc in one st",
    "work 2 sc in the same stitch", "make 2 sc in it", "2 sts in one", "1 sc more", "+1",
    "that is 2 sc in one", "work twice into the same stitch", "2 single crochet in one stitch",
]  # fmt: skip
LOWERED = [
    "1 sc over 2 sts", "sc 2 together", "sc2tog", "work 2 sts together", "skip 1", "2 into 1",
    "insert hook in next 2 sts, yo, pull through both", "front loops of next 2 sts", "makes 1",
    "single crochet two stitches together", "over next 2 sts", "= 2 sts worked as one",
]  # fmt: skip
AROUND = ["{x} around", "{x} x6", "*{x}; rep from * around", "*{x}* 6 times"]
LISTS = ["(sc, {x}) x6", "*sc in next st, {x}; rep from * around", "[sc 1, {x}] 6 times"]


def counts(text: str) -> list[int | None]:
    """What lies on hand after each round; nothing is asked."""
    counted = count_pattern(parse_pattern(text, "", ""))
    assert not counted.problems, text
    return [row.count for part in counted.parts for row in part.rows if row.number]


@pytest.mark.parametrize("said", RAISED)
@pytest.mark.parametrize("name", ["inc", "Increase"])
def test_an_increase_is_made_once(name: str, said: str) -> None:
    for form, bracket in product(AROUND + LISTS, ("({})", "[{}]")):
        words = form.format(x=f"{name} {bracket.format(said)}")
        below = "2 sc in each st" if form in LISTS else "sc in each st"
        start = 12 if form in LISTS else 6
        text = f"Buoy\nRnd 1: 6 sc in magic ring\nRnd 2: {below} around\nRnd 3: {words}\n"
        assert counts(text) == [6, start, start + 6], words


@pytest.mark.parametrize("said", LOWERED)
@pytest.mark.parametrize("name", ["dec", "decrease", "sc2tog", "invisible dec"])
def test_a_decrease_is_made_once(name: str, said: str) -> None:
    for form, bracket in product(AROUND + LISTS, ("({})", "[{}]")):
        words = form.format(x=f"{name} {bracket.format(said)}")
        start = 18 if form in LISTS else 12
        text = f"Buoy\nRnd 1: {start} sc in magic ring\nRnd 2: {words}\nRnd 3: sc in each st\n"
        assert counts(text) == [start, start - 6, start - 6], words


def test_a_list_behind_an_increase_is_worked() -> None:
    rows = ("6 sc in magic ring", "inc, (inc) 5 times", "inc (sc, inc) 5 times, sc")
    text = "\n".join(["Buoy", *(f"Rnd {n}: {row}" for n, row in enumerate(rows, 1))])
    assert counts(text) == [6, 12, 18]
