"""Crocheted garments as makers tell them: rows of a change behind words of what is worked, totals
behind so many rows, armholes, corners, rings closed in a sentence of their own. The pieces are
invented.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.counts.counted import Verdict
from reader.pattern.parser import parse_pattern

PANEL = "Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\n"
BAND = "Ch {}, join to form ring.\nRnd 1: Ch 1, sc in each ch around, join.\n"


def counts_of(text: str) -> list[int | None]:
    """The counts of all rows, without the chain that a piece begins with."""
    parts = count_pattern(parse_pattern(text)).parts
    return [row.count for part in parts for row in part.rows if row.label != "Start"]


@pytest.mark.parametrize(
    ("told", "after"),
    [
        ("Work on in sc, dec 1 st at each end of every row 3 times.", [18, 16, 14]),
        ("Work in sc, dec 1 st at beg and end of each row until 14 sts rem - 14 sts.",
         [18, 16, 14]),
        ("Work even in sc, decreasing 1 st at each end of every row until 14 sts rem.",
         [18, 16, 14]),
        ("Continue in pattern, dec 1 st at each end of every row until 16 sts remain.", [18, 16]),
        ("Row 2: Ch 1, sc in each st across, turn. Working in sc, inc 1 st each side every row "
         "until there are 24 sts.", [20, 22, 24]),
        ("Keeping in sc, dec 1 st at armhole edge every row 2 times. Work straight in sc, "
         "increasing 1 st at same edge every row 2 times.", [19, 18, 19, 20]),
        ("Dec 1 st each end of every row until 16 sts remain. Then inc 1 st each end of next 2 "
         "rows.", [18, 16, 18, 20]),
        ("Row 2: Rep row 1. Working even in sc, repeat last row 2 times. Then continue in sc, "
         "decreasing 1 st at beg of every row 2 times.", [20, 20, 20, 19, 18]),
        ("Continue in sc for 2 rows. Total: 20 sc. Rep last row 2 times. You now have 20 sts.",
         [20, 20, 20, 20]),
        ("Continue in sc for 2 rows: 20 sc.\nInc 1 st at each end of next 2 rows: 24 sts.",
         [20, 20, 22, 24]),
        ("Row 2 (decrease)- Ch 1, sc2tog, sc in each st across.\n"
         "Row 3 (decrease). Ch 1, sc next 2 sts tog, sc in each st across.", [19, 18]),
        ("Row 2: Sl st over first 3 sts, ch 1, sc in next st and in each st across to last 3 sts, "
         "leave last 3 sts unworked.", [14]),
        ("Row 2: Sc around to within last 8 sts; leave rem sts for neck edge, turn.", [12]),
        ("Row 2: Ch 1, sc across to last 2 sts, dec in next 2 sc, turn.\n"
         "Row 3: Ch 1, sc in first sc and in each sc across.", [19, 19]),
    ],
)  # fmt: skip
def test_rows_told_behind_what_is_worked(told: str, after: list[int]) -> None:
    assert counts_of(PANEL + told) == [20, *after]


@pytest.mark.parametrize(
    ("told", "after"),
    [
        ("Rnd 2: Ch 1, sc in next 6 sts, dec over next 2 sts 5 times, sc in each rem st, join.\n"
         "Rnd 3: Ch 1, sc in next 6 sts, sc2tog over next 2 sts 2 times, sc in last 9 sts, join.\n"
         "Rnd 4: Ch 1, sc in next 6 sts, sc next 2 sts tog twice, sc in last 7 sts, join.",
         [19, 17, 15]),
        ("Rnd 2: Ch 1, sc in next 2 sts, 2 sc in next st 8 times.", [32]),
        ("Rnd 2: Ch 1, *sc in next 2 sts, (ch 3, sl st in last sc) for picot; rep from * around.",
         [24]),
        ("Rnd 2: Ch 1, *sc in next 2 sts, make picot of ch 3, sl st in last sc; rep from * around.",
         [24]),
        ("Rnd 2: Ch 1, (1 sc in each of next 8 sts, ch 2, skip next 4 sts for armhole) around.\n"
         "Rnd 3: Ch 1, work sc in each st and each ch around, join.", [16, 20]),
        ("Rnd 2: Ch 1, (sc in next 8 sts, ch 2, leave next 4 sts unworked for sleeve) twice.\n"
         "Rnd 3: Ch 1, sc in each st around, working 1 sc in each underarm ch, join.", [16, 20]),
        ("Rnd 2: Ch 1, 3 sc, ch 5, sk 5 sts (thumb opening), sc in each st to end of round.\n"
         "Rnd 3: Ch 1, 1 sc in each sc and 1 sc in each ch of thumb opening around.", [19, 24]),
        ("Rnd 2: Ch 1, 3 sc, ch 5, sk 5 sts for thumb, sc in each st to end of round.\n"
         "Rnd 3: Ch 1, sc around, working 1 sc in each st and in each ch, join.", [19, 24]),
        ("Rnd 2: Ch 1, work 30 sc evenly in ends of rows along edge of ribbing, join.", [30]),
        ("Rnd 2: Ch 1, *5 sc, (sc, ch 1, sc) in next st; rep from * around, join.\n"
         "Rnd 3: Ch 1, *sc in each st to corner sp, (sc, ch 1, sc) in corner sp; rep from * "
         "around, sc in each rem st, join.", [28, 36]),
        ("Rnd 2 (inc rd). Ch 1, *5 sc, 2 sc in next st; rep from * 3 times more, join.", [28]),
    ],
)  # fmt: skip
def test_rounds_of_a_garment(told: str, after: list[int]) -> None:
    assert counts_of(BAND.format(24) + told) == [24, *after]


@pytest.mark.parametrize(
    "closed",
    [
        "Sl st in first ch to make a big loop, making sure it isn't twisted.",
        "Sl st in first ch to form a ring.",
        "Slip st in first ch.",
        "Join to first ch, without twisting, to form a ring.",
    ],
)
def test_a_ring_closed_on_a_line_of_its_own(closed: str) -> None:
    assert counts_of(f"Ch 42.\n{closed}\nRound 1: Ch 1, 1 sc in each ch, join.") == [42]


def test_rounds_called_back_behind_their_label_in_a_paragraph() -> None:
    text = (
        "Ch 60, join. 1st ROUND. Ch 1, 1 sc in each ch, join. 2nd ROUND. Ch 1, 1 sc in each st, "
        "join. 3rd to 5th ROUNDS. Rep Round 2. 6th ROUND. Ch 1, sc in each st around, join."
    )
    assert counts_of(text) == [60] * 6


def test_a_list_in_a_bracket_is_no_total() -> None:
    text = BAND.format(84) + "Rnd 2: Ch 1, (1 sc in each of next 20 sts, ch 3, sk 22) around."
    part = count_pattern(parse_pattern(text)).parts[0]
    assert part.rows[-1].count == 40
    assert part.rows[-1].verdict is Verdict.NO_TOTAL
