"""Rounds of one stitch in each with more in each corner; common practice, no source: each corner of
k stitches in one adds k - 1. The pieces are invented.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

HATCH = """Hatch cover
Rnd 1: 8 sc in ring. (8)
Rnd 2: *sc in next sc, 3 sc in next sc; rep from * around. (16)
Rnd 3: *sc in next 2 sc, 3 sc in next sc, sc in next sc; rep from * around. (24)
"""


@pytest.mark.parametrize(
    "words",
    [
        "Rnd 4: sc in each sc around, working 3 sc in center st at each corner.",
        "Rnd 4: sc around, 3 sc in each corner st.",
        "Rnd 4: Sc in each st around with 3 sc in the center of each 3-sc corner.",
        "Rnd 4: Work 1 sc in each sc and 1 sc, 1 hdc, 1 sc in center st at each corner.",
        "Rnd 4: sc evenly around, inc at corners.",
        "Rnd 4: work even in sc working 1 sc, 1 hdc, 1 sc in center st at each corner.",
        "Rnd 4: Attach blue in center st at any corner and work 3 sc in same space, 1 sc in each sc"
        " all around working 3 sc in center st at each remaining corner, join.",
        "Rnd 4: Attach blue in any corner, 3 sc in same st, 1 sc in each sc around with 3 sc in"
        " each of the other corners, join.",
        "Rnd 4: same as last round, having 3 sc in each corner.",
        "Rnd 4: sc in each sc, inc 2 sts at each corner.",
        "Rnd 4: * sc in each sc to corner, 3 sc in corner st; rep from * 3 times, sc to end.",
    ],
)
def test_four_corners_told_in_one_sentence(words: str) -> None:
    counted = count_pattern(parse_pattern(HATCH + words))
    assert not counted.problems
    assert counted.parts[0].rows[-1].count == 32
    assert "4 corners" in counted.parts[0].rows[-1].assumed[0]


def test_a_total_for_another_number_of_corners_is_asked_about() -> None:
    told = "Rnd 4: sc in each sc around, 3 sc in each corner. (30)"
    counted = count_pattern(parse_pattern(HATCH + told))
    assert [one.printed for one in counted.problems] == [30]
