"""Totals whose bracket or line says more than the number, and totals on a line of their own below
their row; texts of our own invention.
"""

from __future__ import annotations

import pytest

from reader.app.check import as_json
from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

SQUARE = """Round 1: In a ring: ch 3, 2 dc, ch 2, (3 dc, ch 2) three times. Sl st to top of ch 3.{}
Round 2: Ch 3, dc in next 2 dc, (2 dc, ch 2, 2 dc) in corner sp, *dc in next 3 dc, (2 dc, ch 2, \
2 dc) in corner sp; rep from * twice more. Sl st to join.{}
Round 3: Ch 1, sc in each dc around, 3 sc in each corner sp. Sl st to first sc."""
OF_SIDES = [
    "({t} dc - {s} each side)", "({t} dc: {s} on each side)", "({t} dc; {s} a side)",
    "({t} dc, i.e. {s} per side)", "({t} dc; {s} along each edge)", "({t} dc = {s} per side)",
    "({t} dc, excluding the corner chains)", "( {t} dc ~ {s} per side )",
    "({t} dc; corners are ch-2 sps)", "{t} dc, {s} per side.", "({s} dc on each side = {t})",
    "({t} dc, 4 sides of {s})", "[{t} dc, {s} per side]", "({s} dc on each side)",
]  # fmt: skip
BALL = """Round 1: 6 sc in magic ring.{}
Round 2: 2 sc in each st around.{}
Round 3: (sc 1, 2 sc in next st) 6 times.{}
Round 4: sc in each st around."""
REMARKS = [
    "({t} sc: half of them in front)", "({t} sc - 6 increased)", "({t} sc; move marker up)",
    "({t} sc, that's more than before)", "({t} sc, about 3 cm across)", "(making {t} sc)",
    "(you have {t} sts now)", "({t} sc). See photo 2.", "[{t} sc] Mark this round.",
    "You now have {t} sc on your work.", "{t} sc at the end of the round.",
    "You'll end with {t} sc.",
    "At the end you have {t} stitches.", "({t})", "({t} sc)", "Total: {t} sc.", "= {t}",
]  # fmt: skip


def told(text: str) -> tuple[list[int | None], list[str]]:
    read = as_json(count_pattern(parse_pattern(text), 0))
    counts = [one["count"] for part in read["parts"] for one in part["rounds"]]
    return counts, [one["message"] for one in read["problems"]]


@pytest.mark.parametrize("total", OF_SIDES)
@pytest.mark.parametrize("before", [" ", "\n"])
def test_of_sides(total: str, before: str) -> None:
    first, second = (before + total.format(t=4 * side, s=side) for side in (3, 7))
    assert told(SQUARE.format(first, second)) == ([12, 28, 40], [])


@pytest.mark.parametrize("total", REMARKS)
@pytest.mark.parametrize("before", [" ", "\n"])
def test_with_a_remark(total: str, before: str) -> None:
    totals = (before + total.format(t=number) for number in (6, 12, 18))
    assert told(BALL.format(*totals)) == ([6, 12, 18, 18], [])


def test_a_wrong_one_below_its_row() -> None:
    rows = "Round 1: 6 sc in magic ring.\n(6 sc)\nRound 2: 2 sc in each st.\n(13 sc)"
    counts, problems = told(rows)
    assert counts[:1] == [6]
    assert (len(counts), len(problems)) == (2, 1)


def test_a_line_without_labels_is_a_row() -> None:
    assert told("6 sc in magic ring\n2 sc in each st\n(sc 1, inc) 6 times")[0] == [6, 12, 18]


def test_chains_told_beside_stitches() -> None:
    row = "Round 2: sc in next 6 sts, ch 3, sc in next 6 sts (12 sc + 3 ch)"
    assert told(f"Ch 4, join.\nRound 1: 12 sc in ring.\n{row}") == ([12, 12], [])
