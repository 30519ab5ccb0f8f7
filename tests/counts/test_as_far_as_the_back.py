"""A front told by the back up to a place, in whatever words; common practice, no source."""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

ARMHOLES = (
    "Shape armholes: Cast off 4 sts at beg of next 2 rows. Dec 1 st at each end of next 3 rows."
)
BACKS = (
    f"Work in st st until back measures 30 cm, ending with a WS row.\n{ARMHOLES}\nWork straight "
    "until armhole measures 18 cm.\nShape shoulders: Cast off 12 sts at beg of next 2 rows. Leave "
    "rem 22 sts on a holder.",
    f"Work 20 rows in st st.\n{ARMHOLES}\nWork 30 rows straight. Cast off 12 sts at beg of next 2 "
    "rows. Cast off rem 22 sts.",
)
THROUGH = (
    "Work exactly as for Back until completion of armhole shaping.",
    "Same as back until armhole shaping is completed.", "Work as back including armhole shaping.",
    "Work the same as the back up to the end of the armhole shaping.",
    "Work as back until all armhole decreases are completed.",
    "Work as given for back until 46 sts remain in armhole shaping.",
    "As back to armhole. Shape armholes as back.",
)  # fmt: skip
ABOVE = (
    "Work as given for back until armhole measures 10 cm.",
    "Work as back until armhole measures 4 in.",
    "Same as back until armholes measure 4 inches.",
    "Follow instructions for back until armhole measures 10 cm.",
    "Work as for back until 2 inches above underarm.",
    "Work as for back until front measures 6 cm less than back to shoulder.",
    "As back until 16 rows fewer than back to shoulder.",
)  # fmt: skip
HEADED = (("BACK\n", "FRONT\n"), ("Back: ", "Front: "), ("BACK\u2014", "FRONT\u2014"),
          ("Back.\u2014", "Front.\u2014"), ("The Back\n", "The Front\n"))  # fmt: skip


def front(head: tuple[str, str], back: str, words: str) -> list[int | None]:
    """The counts of the front, which goes on with one side of its neck."""
    begun = f"{head[0]}Cast on 60 sts.\nWork 4 rows in k1, p1 rib.\n{back}\n"
    divided = "Next row: K18, turn, leave rem sts on a holder.\nKnit 1 row.\n"
    pattern = count_pattern(parse_pattern(f"{begun}{head[1]}{words}\n{divided}", craft="knitting"))
    names = [part.name.lower() for part in pattern.parts]
    parts = pattern.parts[next(at for at, name in enumerate(names) if "front" in name) :]
    return [row.count for part in parts for row in part.rows]


@pytest.mark.parametrize("words", THROUGH + ABOVE)
def test_a_front_like_the_back(words: str) -> None:
    for back in BACKS:
        rows = front(HEADED[0], back, words)
        shaped = rows[rows.index(56) :]
        assert shaped[:5] == [56, 52, 50, 48, 46]
        assert (shaped[-2:], {*shaped[4:-2]}) == ([18, 18], {46})


@pytest.mark.parametrize("head", HEADED)
def test_under_any_heading(head: tuple[str, str]) -> None:
    for words in (THROUGH[1], ABOVE[0], ABOVE[3]):
        for back in BACKS:
            assert front(head, back, words)[-2:] == [18, 18]
