"""A neck divided, the rows its sides are shaped in, and armholes before it, in whatever words they
are told; common practice, no source.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

BEGUN = "FRONT\nCast on 60 sts.\nWork 4 rows in st st.\n"
DIVIDED = (
    "Next row: K22, turn. Work on these sts only.", "Next row: K22, turn and work on these sts.",
    "Next row: Patt 22, turn and complete this side of neck first.", "K22, turn.",
    "Next row: K22, turn and work each side of neck separately.",
    "Knit 22, bind off center 16 sts, knit to end. Working one side only:",
    "Next row: K22, cast off 16, k to end. Cont on last 22 sts only, leaving first 22 on a holder.",
    "Next row: K22, turn, and work on this last set of 22 sts, leaving rem sts on a thread.",
    "Work across 22 sts, place next 16 sts on a st holder for front neck, "
    "leave rem 22 sts on second holder. Turn.",
    "Next row: K22, BO center 16 sts, k rem 22 sts. Work on these sts only.",
)  # fmt: skip
SHAPED = (
    "Dec 1 st at neck edge on next 2 rows, then on foll 2 alt rows.",
    "At neck edge, bind off 2 sts once, then dec 1 st every other row twice.",
    "Dec 1 st at neck edge on next and foll 3 alt rows.", "Dec 1 st at neck edge on next 4 rows.",
)  # fmt: skip
ENDED = (
    "Cast off 6 sts at beg of next and foll 2 alt rows.",
    "Cast off 6 sts at beg of next and every foll alt row 3 times in all.",
    "Shape shoulder: Bind off 6 sts at armhole edge every other row 3 times.",
)
BOTH_ENDS = (
    ("Bind off 5 sts each side and dec 1 st at each end of foll 4 alt rows.", 42),
    ("At beg of next 2 rows, bind off 5 sts, then dec 1 st at each end of next 4 rows.", 42),
    ("Bind off 5 sts at beg of each row twice, dec 1 st at each end of every other row 3 times.",
     44),
    ("Dec 1 st at armhole edges every other row 4 times.", 52),
    ("Dec 1 st at each end of next 3 rows and foll 2 alt rows, then on foll 4th row.", 48),
    ("Inc 1 st each end every 1\" until there are 66 sts.", 66),
    ("Inc 1 st at each end of next and every foll 4th row 3 times in all. Work 3 rows.", 66),
)  # fmt: skip


def counted(words: str) -> tuple[list[int | None], list[str]]:
    """The counts in order, and what was asked."""
    pattern = count_pattern(parse_pattern(BEGUN + words, craft="knitting"))
    rows = [row.count for part in pattern.parts for row in part.rows]
    return rows, [one.message for one in pattern.problems]


@pytest.mark.parametrize("divided", DIVIDED)
def test_one_side_is_worked_on(divided: str) -> None:
    for shaped in SHAPED:
        rows, asked = counted(f"{divided}\n{shaped}\nWork 3 rows straight.\n{ENDED[0]}")
        assert (shaped, 22 in rows or 20 in rows, asked) == (shaped, True, [])
        assert (shaped, rows[-4:]) == (shaped, [18, 12, 6, 0])
        assert rows[-7:-4] == [18, 18, 18]


@pytest.mark.parametrize("ended", ENDED)
def test_shoulders(ended: str) -> None:
    rows, asked = counted(f"{DIVIDED[0]}\nDec 1 st at neck edge on next 4 rows.\n{ended}")
    assert ([one for one in (12, 6, 0) if one not in rows], rows[-1], asked) == ([], 0, [])


@pytest.mark.parametrize(("words", "left"), BOTH_ENDS)
def test_at_both_ends(words: str, left: int) -> None:
    rows, asked = counted(words)
    assert (rows[-1], asked) == (left, [])
