"""Toys in letters: what each stands for is told, or usual; an X is then no "times"."""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.counts.counted import Verdict
from reader.pattern.parser import parse_pattern

ROWS = """R1: 6X in magic ring (6)
R2: 6V (12)
R3: (X, V)*6 (18)
R4: [2X, V] x 6 (24)
R5: 24X (24)
R6: (2X, A) 6 times (18)
R7: X, A, 12X, A, X (16)
R8: 8A ({last})
"""
KEYS = [
    "X: sc; V: increase; A: decrease\n",
    "X = single crochet   V = 2X in one st   A = 2X together\n",
    "X - single crochet, V - 2 sc in one stitch, A - sc2tog\n",
    "V = two X in the same stitch\nX = sc\nA = decrease\n",
    "",
]


@pytest.mark.parametrize("key", KEYS)
def test_letters_are_stitches(key: str) -> None:
    counted = count_pattern(parse_pattern("TOY BUOY\n\n" + key + "\n" + ROWS.format(last=8)))
    rows = counted.parts[0].rows
    assert [one.count for one in rows] == [6, 12, 18, 24, 24, 18, 16, 8]
    assert not counted.problems
    assert rows[1].written.startswith("6V")


def test_a_wrong_total_in_letters_is_found() -> None:
    counted = count_pattern(parse_pattern("TOY BUOY\n\n" + KEYS[0] + ROWS.format(last=9)))
    assert [one.verdict for one in counted.problems] == [Verdict.TOTAL_DISAGREES]


def test_an_x_for_times_stays_one() -> None:
    words = "Buoy\n\nR1: 6 sc in MR (6)\nR2: inc X 6 (12)\nR3: (sc, inc) X6 (18)"
    counted = count_pattern(parse_pattern(words))
    assert [one.count for one in counted.parts[0].rows] == [6, 12, 18]


SPOKEN = """The boat

Make a magic ring and put six single crochets into it. That's round one done.

In round two we put two single crochet in every stitch, so you have 12. For rounds three and four \
there's no shaping, just one single crochet in each stitch (12 every time).

Round five: one single crochet, then two in the next, and keep doing that all the way around - 18 \
stitches. Round six is the same idea but with two plain stitches before each increase.
"""


def test_labels_in_running_words() -> None:
    rows = count_pattern(parse_pattern(SPOKEN)).parts[-1].rows
    assert [one.number for one in rows] == [1, 2, 3, 4, 5, 6]
    assert [one.count for one in rows] == [6, 12, 12, 12, 18, 24]


def test_a_round_that_is_only_spoken_of_is_none() -> None:
    words = "Buoy\n\nRound 1: 6 sc in ring.\nRound 2: Inc in each. In round 3 you have 18 sts soon."
    rows = count_pattern(parse_pattern(words)).parts[0].rows
    assert [one.number for one in rows] == [1, 2]
