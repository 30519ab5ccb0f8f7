"""Numbers that a row tells beside its total, of stitches left and of those skipped; and totals of
first rows and of ranges. One that is wrong gives one question, in its own row. The pieces are
invented.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.counts.counted import Verdict
from reader.pattern.parser import parse_pattern

COLLAR = """Pier collar
Ch 30.
Row 1: Sc in 2nd ch from hook and in each ch across. (29 sc)
Row 2: Ch 1, turn, sl st in next {slips} sts, sc in next 21 sts, leave last {left} sts unworked.
"""
BLANKET = """Wave blanket
Ch 27.
Row 1: sc in 2nd ch from hook and in each ch across. (26 sc)
Row 2: Ch 1, turn, *sc in next 5 sts, 3 sc in next st, sc in next 5 sts, sk {skip} sts; rep from *
once more. (26 sc)
"""
BUOY = """Buoy
Rnd 1: 6 sc in magic ring ({first})
Rnd 2: inc x 6 (12)
Rnd 3: (sc, inc) x 6 (18)
Rnds 4-6: sc around ({even})
Rnd 7: (sc, dec) x 6 (12)
"""


def _asked(text: str) -> list[str]:
    found = count_pattern(parse_pattern(text)).problems
    return [one.label for one in found if one.verdict is not Verdict.ECHO]


@pytest.mark.parametrize(
    ("slips", "left", "asked"),
    [(4, 4, []), (4, 3, ["Row 2"]), (4, 6, ["Row 2"]), (3, 4, ["Row 2"])],
)
def test_stitches_left_are_held_against_those_that_are(
    slips: int, left: int, asked: list[str]
) -> None:
    assert _asked(COLLAR.format(slips=slips, left=left)) == asked


@pytest.mark.parametrize(("skip", "asked"), [(2, []), (1, ["Row 2"])])
def test_a_skip_that_leaves_stitches_is_asked_about_though_the_total_agrees(
    skip: int, asked: list[str]
) -> None:
    assert _asked(BLANKET.format(skip=skip)) == asked


@pytest.mark.parametrize("first", [5, 7, 8])
def test_a_wrong_total_of_a_first_row_is_told_there_only(first: int) -> None:
    assert _asked(BUOY.format(first=first, even=18)) == ["Round 1"]


@pytest.mark.parametrize("even", [17, 19, 20])
def test_a_wrong_total_of_several_rows_is_told_at_the_first_only(even: int) -> None:
    assert _asked(BUOY.format(first=6, even=even)) == ["Round 4"]
