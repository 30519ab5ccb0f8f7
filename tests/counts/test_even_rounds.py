"""Rounds without shaping in whatever words, and pieces joined by a round; common practice, no
source. Balls of 12 stitches; legs of 12, joined to 24.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

EVEN = (
    "Sc in each st around for the next 5 rounds.",
    "Sc in each st around for the next 5 rounds (12 sc).", "Sc around for 5 rounds = 12 sts",
    "5 rounds sc", "5 rounds sc, no increase", "5 rnds of sc", "Then 5 rounds straight.",
    "Rnds 3-7: continue working even", "Rnds 3-7: sc around [12 sts each round]",
    "Rnds 3-7: continue working even (12 sc each rnd).", "Rnds 3-7: sc around (12 sts each rnd)",
)  # fmt: skip
JOINED = (
    "12 sc on the first leg, 12 sc on the second leg", "12 sc on first leg, 12 sc on second leg",
    "12 sc around leg 1, then 12 sc around leg 2", "sc in each st around both legs",
    "sc 12 around the first leg, sc 12 around the second leg",
)  # fmt: skip
ARMS = (
    "6 sc, join arm with 3 sc through both layers, 9 sc, join second arm with 3 sc, 3 sc",
    "sc 6, attach arm with next 3 sc, sc 9, attach arm with next 3 sc, sc 3",
    "6 sc, place arm on the body and sc 3 through both, 9 sc, place second arm and sc 3 through "
    "both layers, 3 sc",
    "6 sc, crochet arm and body together with 3 sc, 9 sc, crochet other arm and body together "
    "with 3 sc, 3 sc",
)


def counts(text: str) -> tuple[list[int | None], tuple[object, ...]]:
    """The counts of all rounds, and what was asked."""
    counted = count_pattern(parse_pattern(text))
    return [one.count for part in counted.parts for one in part.rows], counted.problems


@pytest.mark.parametrize("words", EVEN)
def test_even(words: str) -> None:
    text = f"Rnd 1: 6 sc in MR\nRnd 2: inc x 6\n{words}\nRnd 8: (sc, inc) x 6\n"
    assert counts(text) == ([6, *[12] * 6, 18], ())


@pytest.mark.parametrize("words", JOINED)
def test_legs_joined(words: str) -> None:
    text = f"LEG (make 2)\nRnd 1: 6 sc in MR\nRnd 2: inc x 6\nBODY\nRnd 1: {words}\nRnd 2: 24 sc"
    assert counts(text) == ([6, 12, 24, 24], ())


@pytest.mark.parametrize("words", ARMS)
def test_arms_joined(words: str) -> None:
    text = (
        "ARM (make 2)\nRnd 1: 6 sc in MR\nRnds 2-4: sc around\nBODY\nRnd 1: 6 sc in MR\n"
        f"Rnd 2: inc x 6\nRnd 3: inc x 12\nRnd 4: {words}\nRnd 5: sc around\n"
    )
    assert counts(text) == ([6, 6, 6, 6, 6, 12, 24, 24, 24], ())
