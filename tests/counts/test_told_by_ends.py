"""What an oval gains at its ends, its rounds told by side and end, and how many of a stitch each
stitch gets: each wording must be counted alike. The wordings are invented; the counts follow by
addition (62 around a chain of 30, its ends of three).
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

OVAL = """Mooring mat
LP = loop stitch. Colors: Fern, Moss.
Fern, ch 31.
Rnd 1. 3 sc in 2nd ch from hook, sc in next 28 ch, 3 sc in last ch. Other side: sc in next 28 ch.
Rnd 2. sc in each st. (62)
Rnd 3. {words}. Cut Moss.
Rnd 4. sc in each st."""
SIX_AT_EACH = (
    "sc with 6 extra spread over each end", "LP with six extra over each end",
    "sc with 6 extra sts at each end", "sc around with 6 incs evenly over each of the two ends",
    "sc, adding 6 at each end", "sc, 6 more at each end", "sc, 6 more stitches around each end",
    "LP, inc 6 evenly around each curve", "sc, spreading six increases over each curve",
    "sc, with 6 extra in either curve", "sc, gaining 6 sts at each end",
    "sc, 6 extra at each short end", "LP, 6 more at one end and 6 more at the other",
    "sc, with 6 extra here and 6 extra there", "sc, working 6 increases spaced out at both ends",
    "sc, and at each end 6 times 2 in a st, with 2 plain ones between",
    "sc, and at each end inc 6 times with 2 plain between", "sc; at each end put 2 in a st 6 times",
    "sc, with 6 times 2 sc in a st at each end", "sc, and 6 times at each end put 2 in one st",
    "sc, and at each end put 2 into every second one of the 12 curve sts",
    "LP, and at both ends put two in every other one of the 12 curve sts",
    "sc, with 2 into every second of the 12 curve sts of each end",
    "sc. Each end has 18 curve sts by now: 2 into every third of them",
    "sc, doubling every third one of the 18 sts in each curve",
    "sc, with an increase in every other one of the 12 sts of each curve",
)  # fmt: skip
SIDES_AND_ENDS = (
    "sc: 1 in each of 28 along either side, 2 in each of 3 around either end",
    "LP: one in each of 28 on both sides and two in each of 3 on both ends",
    "sc: 2 in each of the 3 LP at either end, 1 in each of the 28 along either side",
    "1 sc in each of the 28 sts along each long side, 2 sc in each of the 3 sts over each end",
    "28 sc on each side, inc in each of the 3 sts at each end",
)
ONE_EACH = (
    "sc, one per st", "sc: 1 per st", "sc, always one per stitch", "LP, one per st",
    "LP in Moss, one per st", "sc all plain, one per st", "sc on sc",
)  # fmt: skip
TWO_EACH = (
    "sc, two per st", "sc, two in every st", "LP, 2 in each st", "sc, two to a st",
    "sc, two to each stitch", "LP in Moss, two per st",
)  # fmt: skip
TOLD = (
    *((words, 74) for words in SIX_AT_EACH), *((words, 68) for words in SIDES_AND_ENDS),
    *((words, 62) for words in ONE_EACH), *((words, 124) for words in TWO_EACH),
    ("sc with 6 fewer at each end", 50),
)  # fmt: skip


@pytest.mark.parametrize(("words", "stitches"), TOLD)
def test_each_wording_makes_the_same_count(words: str, stitches: int) -> None:
    counted = count_pattern(parse_pattern(OVAL.format(words=words)))
    assert [row.count for part in counted.parts for row in part.rows][-2:] == [stitches, stitches]
    assert not counted.problems
