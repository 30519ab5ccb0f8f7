"""Old rounds told once over, and rows labelled by an ordinal and a stop. The pieces are invented,
the counts arithmetic.
"""

from __future__ import annotations

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

BUOY_MAT = """Buoy mat
Make 12 chain and form a round.
1st. 24 d c in the circle.
2nd. 1 d c, 5 ch, miss 2, and repeat.
3rd. 1 d c on the centre of the 5, 6 ch, and so on all round.
4th. The same, with 7 ch.
5th. 7 d c on each 7 ch.
"""
LAMP_MAT = """Lamp mat
Chain 8, join in a ring.
1st round. 24 dc in ring, join.
2d round. 1 dc on first dc, 3 ch, miss 1; repeat.
3d round. 1 dc on centre of 3 ch, 3 ch, miss 3.
4th round. 5 dc on 3 ch, 1 ch.
"""
ANCHOR_MAT = """Anchor mat
Round 1: 18 sc in ring.
Round 2: (sc, ch 5, skip 2 sc).
Round 3: (sc, hdc, 3 dc, hdc, sc) in each loop.
"""
HALF_WAY = """Half way
Round 1: 18 sc in ring.
Round 2: sc in next 3 sc.
"""


def _counts(text: str) -> list[int | None]:
    rows = [row for part in count_pattern(parse_pattern(text)).parts for row in part.rows]
    return [row.count for row in rows if row.number is not None]


def test_rows_are_labelled_by_ordinals_that_count_on() -> None:
    assert _counts(BUOY_MAT) == [24, 8, 8, 8, 56]


def test_a_round_of_chains_told_once_goes_on_all_round() -> None:
    assert _counts(LAMP_MAT) == [24, 12, 12, 60]
    assert _counts(ANCHOR_MAT) == [18, 6, 42]


def test_plain_stitches_told_once_are_those_alone() -> None:
    assert _counts(HALF_WAY) == [18, 3]


def test_ordinals_amid_a_sentence_are_places() -> None:
    text = "Chain 20.\n1st row. Miss 2, 1 dc in 3rd. Turn.\n2nd row. 1 dc in the 4th. Turn.\n"
    assert len(_counts(text)) == 2
