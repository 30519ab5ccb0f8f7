"""Heels of socks: a flap over half of a round's stitches, its turn, and the gusset that takes the
instep up again.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

LEG = """Pier socks

Cast on 48 sts. Join to work in the round.
Rounds 1-2: *k2, p2; rep from * around.

"""
FLAPS = (
    "Heel flap\nRow 1 (RS): sl 1, k23, turn.\nRow 2: sl 1, p23.\n"
    "Repeat rows 1 and 2 3 more times.\n",
    "Heel flap\nRow 1: sl 1, k23, turn.\nRow 2: sl 1, p to end, turn.\n"
    "Rows 3-8: Repeat rows 1-2.\n",
    "Heel flap (worked over half the sts)\nRow 1: *sl 1, k1*, repeat across 24 sts. Turn.\n"
    "Row 2: sl 1, p23. Turn.\nWork rows 1-2 a total of 4 times.\n",
    "Heel flap\nKnit 24 sts onto one needle for the heel. Place the remaining 24 sts on a holder.\n"
    "Row 1: sl 1, p23.\nRow 2: *sl 1, k1; rep from * to end.\nRep rows 1-2 3 times more.\n",
)
TURN = """
Turn heel
Row 1: sl 1, k13, ssk, k1, turn.
Row 2: sl 1, p5, p2tog, p1, turn.
Row 3: sl 1, k6, ssk, k1, turn.
Row 4: sl 1, p7, p2tog, p1, turn.
Continue in this way, working one more st before the dec each row, until all sts have been worked.

"""
GUSSETS = (
    ("K14, pick up and knit 5 sts along the flap, k24 instep sts, pick up and knit 5 sts.", 48),
    ("Knit across 14 heel sts, pick up 5 sts along the flap, work across 24 instep sts, pick up 5"
     " sts along the other side, k7.", 48),
    ("Knit across heel sts. Pick up and knit 5 sts down the flap, M1, pm, knit across instep, pm,"
     " M1, pick up and knit 5 sts up the other side.", 50),
)  # fmt: skip


@pytest.mark.parametrize("flap", FLAPS)
@pytest.mark.parametrize(("gusset", "after"), GUSSETS)
def test_flap_turn_and_gusset(flap: str, gusset: str, after: int) -> None:
    text = f"{LEG}{flap}{TURN}Gusset\n{gusset}\nRound 1: knit.\n"
    counted = count_pattern(parse_pattern(text))
    rows = [row.count for part in counted.parts for row in part.rows]
    flap_rows = [
        row.count for part in counted.parts if part.name.startswith("Heel") for row in part.rows
    ]
    assert set(flap_rows) <= {24}
    assert rows[-3 if "Knit across heel" in gusset else -2] in (14, after)
    assert rows[-2:] == [after, after]
    assert counted.problems == ()


def test_a_heel_of_short_rows_keeps_all_stitches() -> None:
    text = f"{LEG}Heel\nRow 1: k23, turn.\nRow 2: p22, turn.\nRow 3: k21, turn.\n"
    counted = count_pattern(parse_pattern(text))
    assert [row.count for row in counted.parts[-1].rows] == [48, 48, 48]
