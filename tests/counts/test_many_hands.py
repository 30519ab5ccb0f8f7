"""Ways of telling that other authors have: short names for a bobble, totals behind "::", rounds
called turns, ranges with no colon; common practice, no source. The pieces are invented.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

PIECES = {
    "bobble by a letter": (
        "Net mat\nB = bobble (5 hdc left open, yo, through all 6 loops).\n"
        "Row 1: ch 12, sc in 2nd ch from hook and each ch across (11)\nRow 2: 5 sc, B, 5 sc\n",
        [11, 11],
    ),
    "popcorn by the hook": (
        "Net mat\nPC (popcorn) = 5 dc in same st, remove hook, insert it in first of the 5 dc,"
        " catch the dropped loop and pull through.\n"
        "Row 1: ch 12, sc in 2nd ch from hook and each ch across (11)\n"
        "Row 2: ch 1, *sc in next st, PC in next st; rep from * to last st, sc in last st\n",
        [11, 11],
    ),
    "two colons": (
        "Gull\nR1 MR 6 :: 6\nR2 inc 6 times :: 12\nR3 1 sc, inc, repeat 6 times :: 18\n"
        "R4-5 sc :: 18\nR6 1 sc, dec, repeat 6 times :: 12\n",
        [6, 12, 18, 18, 18, 12],
    ),
    "range by two letters": (
        "Gull\nR1 6SC in magic ring\nR2 6INC =12\nR3 (1SC,INC)*6=18\nR4-R6 18SC\n"
        "R7 (1SC,DEC)*6=12\n",
        [6, 12, 18, 18, 18, 18, 12],
    ),
    "turns": (
        "Scrubber. Turn 1 - in a magic ring make 8 half double crochets. Turn 2 - 2 half double"
        " crochets in each stitch (16). Turn 3 - 1 half double crochet in each stitch (16).\n",
        [8, 16, 16],
    ),
    "a V to work into": (
        "Cowl\nRnd 1: ch 12, join, ch 1, sc in each ch (12)\n"
        "Rnd 2: ch 4, dc in the same st: one V is made. *skip 2, work (dc, ch 1, dc) in the next*,"
        " repeat to the last 2, skip those, join to the 3rd ch.\n"
        "Rnd 3: Slip stitch into the V, ch 4, dc in the same V, then (dc, ch 1, dc) in each V.\n",
        [12, 8, 8],
    ),
    "in a list that a star opened": (
        "Muff\nRow 1: ch 10, sc in 2nd ch from hook and each ch across (9)\n"
        "Row 2: ch 1, *1 sc in next 2 sc, 1 bobble in next sc (4 dc together); to end, turn.\n",
        [9, 9],
    ),
}


@pytest.mark.parametrize("name", PIECES)
def test_every_row_is_counted(name: str) -> None:
    text, counts = PIECES[name]
    counted = count_pattern(parse_pattern(text))
    assert [row.count for part in counted.parts for row in part.rows] == counts


def test_numbers_of_two_sizes_told_by_the_first_chain() -> None:
    text = "Crown\nChain 72 (84), join.\nRound 1: ch 1, sc in each chain. 72 (84)\n"
    pattern = parse_pattern(text)
    assert [count_pattern(pattern, size).parts[0].rows[-1].count for size in (0, 1)] == [72, 84]


@pytest.mark.parametrize(
    ("text", "counts"),
    [
        ("Cap\nCast on 48 stitches.\nTo narrow for the crown:\n"
         "1st round. *Knit 10, narrow; repeat from * to end of round. (44 stitches.)\n", [48, 44]),
        ("Band\nCast on with grey 24 st on needles 3,5.\n1. round: k1, p1.\n", [24, 24]),
        ("Scarf\nCast on 6 stitches.\n1. row: knit.\n"
         "2. row: knit to 1 last stitch, make 1, knit 1. (7)\n", [6, 6, 7]),
        ("Puppet\nCast on 20 stitches.\n1st row - Knit.\n"
         "2nd to 5th rows - Purl a row, knit a row, twice.\n", [20, 20, 20, 20, 20, 20]),
    ],
)  # fmt: skip
def test_knitting_as_others_tell_it(text: str, counts: list[int]) -> None:
    counted = count_pattern(parse_pattern(text))
    assert not counted.problems
    assert [row.count for part in counted.parts for row in part.rows] == counts
