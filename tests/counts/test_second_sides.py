"""The second side of a neck, and sizes told by letters, in whatever words; common practice, no
source.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

FIRST = (
    "FRONT\nCast on 60 sts.\nWork 4 rows in st st.\nNext row: K22, turn, work on these sts only.\n"
    "Dec 1 st at neck edge on next 4 rows.\nWork 3 rows.\nCast off rem 18 sts.\n"
)
TAKEN_UP = (
    "With RS facing, slip centre 16 sts onto a holder, rejoin yarn to rem sts and k to end.",
    "Return to rem sts. Slip centre 16 sts on a holder, rejoin yarn and k to end.",
    "Slip first 16 sts on holder for neck, join yarn and k to end.",
    "Join yarn at neck edge of other side, bind off 16 sts, k to end.",
    "Return to sts left on spare needle, sl first 16 sts onto a holder, rejoin yarn to next st and "
    "k to end.",
    "Go back to sts on spare needle; cast off 16 sts, k to end.",
    "Place center 16 sts on holder, join yarn and k rem 22 sts.",
)
LIKE_IT = (
    "Complete to match first side, reversing shapings.", "Work other side to correspond.",
    "Finish same as other side, reversing shaping.", "Now work this side to match first side.",
    "Dec 1 st at neck edge on next 4 rows. Work 3 rows. Cast off rem 18 sts.",
)  # fmt: skip
SIDE = [22, 21, 20, 19, 18, 18, 18, 18, 0]


@pytest.mark.parametrize("taken_up", TAKEN_UP)
def test_second_sides(taken_up: str) -> None:
    for like_it in LIKE_IT:
        counted = count_pattern(parse_pattern(f"{FIRST}{taken_up}\n{like_it}\n", craft="knitting"))
        rows = [row.count for part in counted.parts for row in part.rows]
        assert (like_it, rows[-18:], counted.problems) == (like_it, [*SIDE, *SIDE], ())


LETTERED = """STEVEDORE'S WAISTCOAT
Sizes : a) small - b) medium - c) large
BACK : cast on a) 60 - b) 66 - c) 72 sts.
Rows 1 to 6 : rib 1/1.
Row 7 : knit, increasing 4 sts evenly in the row = a) 64 - b) 70 - c) 76 sts.
Row 8 : Inc 1 st each side = a) 66 - b) 72 - c) 78 sts.
"""


def test_sizes_by_letters() -> None:
    pattern = parse_pattern(LETTERED)
    last = [count_pattern(pattern, size).parts[-1].rows[-1] for size in range(3)]
    assert [row.count for row in last] == [row.stated for row in last] == [66, 72, 78]


def test_a_list_cast_on_alone() -> None:
    text = "Size      S    M    L\n\nBACK\nCast on 60 [66, 72].\nRow 1: K.\n"
    assert len(parse_pattern(text).sizes) == 3
