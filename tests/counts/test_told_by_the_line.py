"""Knitting told line by line as it is spoken, and blocks whose strips are picked up from one
another; common practice, no source. The pieces are invented.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

PIECES = {
    "a cap spoken": (
        "Lamp cap, spoken\n\ncast on thirty two stitches and join\n"
        "the first two rounds are rib, so knit one purl one all the way round\n"
        "now the top. dec round: knit six, knit two together, and do that all the way round."
        " you'll have twenty eight\nthen one plain round\n"
        "next one: knit five, knit two together, all around, so that's twenty four left\n"
        "another plain round\nknit four, knit two together, around. twenty\n"
        "and then just knit two together all the way round and you've got ten stitches\n",
        [32, 32, 32, 28, 28, 24, 24, 20, 10],
    ),
    "plain rounds without a verb": (
        "Lamp cap\n\nCast on 32 sts, join.\nDec round: *k6, k2tog; rep from * around. (28)\n"
        "Plain round.\nNext round: *k5, k2tog; rep from * around. (24)\nTwo rounds plain.\n"
        "Next round: *k4, k2tog; rep from * around. (20)\n",
        [32, 28, 28, 24, 24, 24, 20],
    ),
    "strips around a middle": (
        "Deck rug\n\nMiddle: Cast on 9 sts. Knit 2 rows. Bind off on the next row until 1 st"
        " is left on the right needle.\n\n"
        "Strip 2: Turn the rug a quarter turn clockwise and pick up and knit 8 sts along the side,"
        " one for each ridge (9 sts). Knit 1 row and bind off all but the last stitch.\n\n"
        "Strip 3: Quarter turn. Pick up and knit 17 (8 along strip 2, 9 along the middle)."
        " 18 sts on the needle. Knit 1 row. This time bind off everything.\n",
        [9, 9, 9, 1, 9, 9, 1, 18, 18, 0],
    ),
    "a last stitch fastened off": (
        "Deck rug\n\nCast on 9 sts. Knit 1 row. Bind off to the last st. Fasten off.\n"
        "Pick up and knit 8 sts along the side. Knit 1 row. Bind them all off.\n",
        [9, 9, 1, 8, 8, 0],
    ),
}

PIECES |= {
    "a border that ends amid its rows": (
        "Sail border\n\nCast on 6 sts.\nRow 1: K4, yo, k2. (7)\nRow 2: K.\n"
        "Row 3: K4, yo, k to end. (8)\nRow 4: Bind off 2 sts, k to end. (6)\n"
        "Repeat rows 1-4 until it goes round the flag, finishing after row 3. Bind off.\n",
        [6, 7, 7, 8, 6, 8, 0],
    ),
    "a last repeat cut short": (
        "Sail border\n\nCast on 6 sts.\nRow 1: K4, yo, k2. (7)\n"
        "Row 2: Bind off 1 st, k to end. (6)\n"
        "Repeat rows 1-2 twice more, omitting row 2 on the last repeat.\n",
        [6, 7, 6, 7, 6, 7],
    ),
    "a second side": (
        "Deck vest\n\nCast on 12 sts.\nNext row: k. 4, k. 2 tog., turn; place remaining 6 sts. on a"
        " spare needle. (5 sts.)\nCast off 3 sts. at beg. of next row. Work 1 row. Cast off 2 sts."
        " at beg. of next and every alt. row until all are worked off.\n"
        "Rejoin wool to remaining 6 sts. at neck edge, k. 2 tog., k. to end (5 sts.), and complete"
        " to match first side, reversing shapings.\n",
        [12, 5, 2, 2, 0, 6, 5, 2, 2, 0],
    ),
}

PIECES |= {
    "a row kept at": (
        "Deck cloth\n\nCast on 4 sts. Knit one row.\n\nNow the increase row: k2, yo, knit to the"
        " end.\n\nKeep at it till there are 7 stitches.\n\nThen the way back: k1, k2tog, k to"
        " end. Same again next row, 5, and so forth until you have 4 left.\n",
        [4, 4, 5, 6, 7, 6, 5, 4],
    ),
    "a pair kept at": (
        "Deck sock\n\nCast on 16 sts, join.\nRound 1. K2tog, k to last 2 sts, k2tog. (14)\n"
        "Round 2. Knit.\nKeep on with those two until it is 10 left.\n",
        [16, 14, 14, 12, 12, 10],
    ),
    "a heel turned for": (
        "Deck sock\n\nCast on 24 sts, join.\nHeel. Knit 6, turn, slip 1, purl 11, and now you have"
        " 12 on one needle for the heel. The other 12 just wait.\nRow 1. Slip 1, knit to end.\n",
        [24, 12, 12],
    ),
    "the even rows told behind": (
        "Deck cuff\n\na) Cast on 10 sts.\nb) Rows 1 to 3: *knit 2, purl 2*, keep going, end with"
        " knit 2; on the even rows *purl 2, knit 2*, end with purl 2.\nc) Row 4: knit.\n",
        [10, 10, 10, 10, 10],
    ),
    "the even rounds told aside": (
        "Lamp cap\n\nCO 12 sts, join.\nRound 1: *k4, k2tog* - 10\n"
        "Round 2 and the other even rounds up to Round 4: knit\nRound 3: *k3, k2tog* - 8\n"
        "Round 5: *k2, k2tog* - 6\n",
        [12, 10, 10, 8, 8, 6],
    ),
    "a stitch on a pin": (
        "Deck vest\n\nCast on 21 sts.\nNext row: k 10, slip next st on to a safety-pin, leave rem"
        " 10 sts on a spare needle, turn.\nNext row: p.\n",
        [21, 10, 10],
    ),
    "rows that end with so many knitted": (
        "Deck cuff\n\nCO 10 sts.\nRow 1: *knit 2, purl 2*, end with knit 2.\n"
        "Row 2: *purl 2, knit 2*, end with purl 2.\nRow 3: *knit 2, purl 2*, end with knit 2.\n"
        "Row 4: *purl 2, knit 2*, ending with purl 2.\n",
        [10, 10, 10, 10, 10],
    ),
}


@pytest.mark.parametrize("name", PIECES)
def test_every_row_is_counted(name: str) -> None:
    text, counts = PIECES[name]
    counted = count_pattern(parse_pattern(text))
    assert [row.count for part in counted.parts for row in part.rows] == counts


@pytest.mark.parametrize(
    ("words", "left"),
    [
        ("Bind off, leaving the last st on the needle.", 1),
        ("Cast off knitwise until there are only 3 sts on the right needle.", 3),
        ("Cast all the sts off.", 0),
        ("Cast off, leaving a long tail.", 0),
    ],
)
def test_how_much_is_bound_off(words: str, left: int) -> None:
    counted = count_pattern(parse_pattern(f"Flag\n\nCast on 12 sts.\nRow 1: Knit.\n{words}\n"))
    assert counted.parts[0].rows[-1].count == left


@pytest.mark.parametrize("over", ["w.f.", "wl. fd.", "y.f.", "yfrn", "yfon", "wo", "w.rd.n."])
def test_an_over_is_never_dropped(over: str) -> None:
    words = f"K. 1, * {over}, k. 2 tog., rep. from * to end."
    counted = count_pattern(parse_pattern(f"Flag\n\nCast on 13 sts.\nNext row: {words}\n"))
    assert counted.parts[0].rows[-1].count == 13
    assert not counted.problems


@pytest.mark.parametrize(
    "name", ["sk2togpo", "sl1k2togpsso", "s2togkpo", "sl2togk1psso", "dbl dec", "double dec"]
)
def test_two_are_gone(name: str) -> None:
    text = f"Flag\n\nCast on 13 sts.\nRow 1: K4, {name}, k to end.\n"
    counted = count_pattern(parse_pattern(text))
    assert counted.parts[0].rows[-1].count == 11


@pytest.mark.parametrize("name", ["skkpo", "ssktbl", "ktog"])
def test_a_short_name_nobody_knows_is_asked_about(name: str) -> None:
    text = f"Flag\n\nCast on 13 sts.\nRow 1: K4, {name}, k to end.\n"
    counted = count_pattern(parse_pattern(text))
    assert counted.problems


@pytest.mark.parametrize(
    "words",
    [
        "Pick up 24 sts along the rail, 12 on each side of the mast.",
        "Pick up and knit 24 sts around: 7 down the left front, 7 up the right and 10 behind.",
        "Pick up and k 7 sts down left front, 7 up right front and 10 across the back.",
        "Pick up 24 sts along the rail, 1 in each ridge.",
    ],
)
def test_what_is_picked_up_is_counted_once(words: str) -> None:
    counted = count_pattern(parse_pattern(f"Collar\n\n{words}\nRow 1: K2, purl to end.\n"))
    assert counted.parts[0].rows[-1].count == 24
