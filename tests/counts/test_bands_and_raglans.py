"""Bands that are picked up, their buttonholes, and yokes that grow at markers, in whatever words
they are told; common practice, no source.
"""

from __future__ import annotations

import itertools

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

BACK = "BACK\nCast on 60 sts.\nKnit 2 rows.\nCast off.\n\n"
HEADED = (
    "NECKBAND\n", "Collar: ", "NECKBAND\u2014",
    "MAKING UP AND NECKBAND\nJoin right shoulder seam.\n",
    "MAKING UP\nJoin right shoulder seam. ", "Neck border\nSew left shoulder seam. ",
)  # fmt: skip
PICKED = (
    "With RS facing, k up 20 sts down left front neck, k16 from front neck, k up 20 sts up right "
    "front neck, k24 from back neck.",
    "With RS facing, pick up and k 80 sts evenly around neck edge.",
    "From right side, with smaller needles, knit up eighty stitches along edge.",
    "With RS facing, pick up 24 sts across back neck, 20 sts down left side, 16 sts across front "
    "and 20 sts up right side. 80 sts.",
)  # fmt: skip
HOLES = (
    "Buttonhole row: Rib 4, *cast off 2 sts, rib 16 (including st on needle after cast off); "
    "rep from * 3 times more, rib 4.",
    "Next row: Rib 4, (cast off 2, rib 16) 4 times, rib 4.",
)
CLOSED = (
    "Rib, casting on 2 sts over those cast off.",
    "Work in rib, casting on 2 sts over each buttonhole.",
    "Rib across, casting on over bound off sts.",
    "K, cast on 2 sts over each 2 sts cast off in previous row.",
    "In rib, cast on 2 sts where sts were cast off in previous row.",
    "Rib 4, (cast on 2, rib 14) 4 times, rib to end.",
)  # fmt: skip
MARKED = (
    "Next row: P10, pm, p10, pm, p20, pm, p10, pm, p10.",
    "Set up: P10, pm, p10, pm, p20, pm, p10, pm, p10",
    "Row 1 (WS): P10 (front), pm, p10 (sleeve), pm, p20 (back), pm, p10 (sleeve), pm, p10 (front).",
)  # fmt: skip
GROWN = (
    "Inc 1 st before and after each marker every RS row 6 times.",
    "Increase 1 st each side of each marker every other row 6 times.",
    "Knit, inc 1 st before and after each marker on next and every RS row to 108 sts.",
    "Inc row: (K to 1 st before marker, kfb, sm, kfb) 4 times, k to end.\n"
    "Next row: Purl.\nRep these 2 rows 5 more times.",
)  # fmt: skip


def counted(text: str) -> tuple[list[int | None], list[str]]:
    """The counts in order, and what was asked."""
    pattern = count_pattern(parse_pattern(text, craft="knitting"))
    rows = [row.count for part in pattern.parts for row in part.rows]
    return rows, [one.message for one in pattern.problems]


@pytest.mark.parametrize("headed", HEADED)
def test_bands_are_picked_up(headed: str) -> None:
    for picked in PICKED:
        rows, asked = counted(f"{BACK}{headed}{picked}\nRib 2 rows. Cast off ribwise.\n")
        assert (picked, rows, asked) == (picked, [60, 60, 60, 0, 80, 80, 80, 0], [])


@pytest.mark.parametrize(("holes", "closed"), [*itertools.product(HOLES, CLOSED)])
def test_buttonholes_are_closed(holes: str, closed: str) -> None:
    begun = "BAND\nCast on 80 sts.\nRib 1 row.\n"
    rows, asked = counted(f"{begun}{holes}\nNext row: {closed}\nKnit 1 row.")
    assert (rows, asked) == ([80, 80, 72, 80, 80], [])


@pytest.mark.parametrize(("marked", "grown"), [*itertools.product(MARKED, GROWN)])
def test_yokes_grow_at_markers(marked: str, grown: str) -> None:
    rows, asked = counted(f"Yoke\nCO 60 sts.\n{marked}\n{grown}\nKnit 1 row.")
    assert (68 in rows, rows[-1], asked) == (True, 108, [])


def test_sleeves_are_taken_from_holders() -> None:
    body = "BODY\nCO 60 sts. K 20, sl next 22 sts to holder, k 18. Cast off.\n"
    sleeve = "Sleeves\nSl 22 sts from holder to needle, cast on 2 sts at beg of next 2 rows."
    assert counted(f"{body}{sleeve} 26 sts.\nKnit 2 rows.\n")[0][-5:] == [22, 24, 26, 26, 26]
