"""Rows called back by their names, plain rows told without a verb, stripes that tell how many rows.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.counts.counted import Verdict
from reader.pattern.parser import parse_pattern

STARTS = ("Foundation", "Start")


def counts(text: str) -> list[int | None]:
    """The counts of all rows, and no problem raised."""
    counted = count_pattern(parse_pattern(text))
    assert [one.message for one in counted.problems] == []
    return [one.count for part in counted.parts for one in part.rows if one.label not in STARTS]


SAIL = """Sail

CO 20 sts.
Row 1: Knit.
Inc row: K1, kfb, k to last 2 sts, kfb, k1. (22)
Row 3: Knit.
"""


@pytest.mark.parametrize(
    ("words", "made"),
    [
        ("Work inc row again.", [24]),
        ("Work one more increase row: 24 sts.", [24]),
        ("Then repeat the Inc Row. 24 sts.", [24]),
        ("Work 3 more inc rows.", [24, 26, 28]),
        ("Work inc row 3 times in total.", [24, 26]),
        ("Repeat inc row until there are 28 sts.", [24, 26, 28]),
    ],
)
def test_a_row_is_called_back_by_its_name(words: str, made: list[int]) -> None:
    assert counts(SAIL + words + "\nKnit 1 row.")[4:] == [*made, made[-1]]


def test_a_row_told_anew_behind_its_name() -> None:
    words = "Work one more increase row: K1, kfb, kfb, k to last 3 sts, kfb, kfb, k1."
    assert counts(SAIL + words)[4:] == [26]


def test_a_row_called_back_that_gains_otherwise_is_asked_about() -> None:
    """Whether eighteen become twenty-four or twenty-seven, the words don't say."""
    words = "Buoy\n\nRnd 1: 12 sc in ring.\nInc rnd: *sc, inc; rep from * around.\n"
    counted = count_pattern(parse_pattern(words + "Work another increase round."))
    assert [one.verdict for one in counted.problems] == [Verdict.UNCLEAR]


def test_rows_with_letters() -> None:
    words = (
        "Net\n\nCO 24 sts.\nRow A: *K2, p2; rep from * to end.\nRow B: *P2, k2; rep from * to end."
        "\nAlternate rows A and B 3 more times.\nNext row: K2tog across."
    )
    assert counts(words) == [24] * 9 + [12]


def test_plain_rows_without_a_verb() -> None:
    words = (
        "Buoy\n\nRnd 1: 6 sc in MR.\nRnd 2: inc around. (12)\nNo increases for 3 rounds.\n"
        "Next 2 rounds plain.\nRnd 8: (sc, inc) around. (18)\nThen sc even for 4 rounds.\n"
        "2 rounds without increasing."
    )
    assert counts(words) == [6, 12, 12, 12, 12, 12, 12, 18, 18, 18, 18, 18, 18, 18]


def test_stripes_tell_how_many_rows() -> None:
    words = (
        "Flag\n\nWith A, ch 21.\nRow 1: sc in 2nd ch from hook and in each ch across. 20 sc.\n"
        "Row 2: ch 1, turn, sc across.\nAlternating 2 rows of A and 2 rows of B, repeat Row 2 "
        "until there are {stripes}.\nNext row: ch 1, turn, 2 sc in each st."
    )
    assert counts(words.format(stripes="6 stripes of each color")) == [20] * 24 + [40]
    assert counts(words.format(stripes="5 stripes")) == [20] * 10 + [40]


def test_a_first_row_again_is_worked_into_stitches() -> None:
    words = "Mat\n\nCh 16.\nRow 1: sc in 2nd ch from hook and each ch to end.\n"
    assert counts(words + "Rows 2 to 5: As row 1.\nRow 6: Sc across.") == [15] * 6
    assert counts(words + "Repeat row 1 four more times.\nRow 6: Sc across.") == [15] * 6


def test_a_goal_above_the_whole_round_is_of_the_whole() -> None:
    words = (
        "Buoy\n\nRnd 1: 6 sc in MR.\nRnd 2: inc around. (12)\nRnd 3: (sc, inc) around. (18)\nKeep "
        "adding one more sc between the increases every round until you have 42 sts."
    )
    assert counts(words) == [6, 12, 18, 24, 30, 36, 42]


@pytest.mark.parametrize(("chains", "asked"), [(1, []), (2, [Verdict.UNCLEAR])])
def test_spaces_that_the_row_below_has_not(chains: int, asked: list[Verdict]) -> None:
    words = (
        "Mat\n\nRnd 1: 16 sc in ring.\nRnd 2: ch 4, *sk 1, dc in next st, ch 1; rep from * around, "
        "join to 3rd ch. (8 dc, 8 ch-1 sps)\nRnd 3: 3 dc in each ch-"
    )
    counted = count_pattern(parse_pattern(f"{words}{chains} sp around. (24)"))
    assert [one.verdict for one in counted.problems] == asked
