"""Yarn overs in the words of two centuries: "thread over twice", "wool forward", "turn the thread
once round the needle", "bring the yarn in front" -> Work.
"""

from __future__ import annotations

from itertools import pairwise

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.knitting_fabric import worked
from reader.pattern.tree import Act, Deed, Node, Num

OVERS = (
    "bring the wool forward", "bring wool forward", "bring the thread forward",
    "bring thread forward", "bring the cotton forward", "bring cotton forward",
    "bring the yarn forward", "bring yarn forward", "bring the silk forward",
    "pass the wool over", "pass the thread over", "pass the cotton over", "turn the wool over",
    "put the wool over", "put the thread over", "put the cotton over", "put the yarn over",
    "throw the thread over", "throw the wool over", "throw thread over", "throw the cotton over",
    "wool round needle", "wool round the needle", "yarn round needle", "yarn round the needle",
    "thread round the needle", "cotton round the needle", "wool on needle", "yarn on needle",
    "wool over needle", "yarn over needle", "wool over the needle", "thread over the needle",
    "cotton over the needle", "thread over", "wool over", "cotton over", "silk over", "yarn over",
    "thread forward", "wool forward", "cotton forward", "yarn forward", "silk forward",
    "wool fwd", "wl fwd", "w fwd", "wfwd", "yarn fwd", "yfwd", "cotton fwd", "thread fwd",
    "wl rd n", "w r n", "wrn", "y r n", "yrn", "wl o n", "w o n", "won", "yon", "y o n", "th o",
    "y fwd", "y f", "w f", "w fd", "wl f", "yf",
)  # fmt: skip
"""An over, in the words of two centuries; figures or "twice" may follow."""
THREADS = frozenset(["yarn", "wool", "thread", "cotton", "silk"])
IN_FRONT = tuple(
    f"{bring}{thread} {where}"
    for bring in ("bring the ", "bring ", "put the ", "throw the ", "")
    for thread in ("thread", "wool", "yarn", "cotton", "silk")
    for where in ("in front", "to front", "to the front", "before the needle")
)
"""The yarn between the needles: an over where a knitted stitch follows."""
TURNS = frozenset(["turn", "throw", "put", "pass", "bring", "wind", "lay", "wrap", "take"])
AROUND = ("round", "around", "over", "about")


def find_over(cur: Cursor, start: int) -> Node | None:
    """The over that stands here, taken; None (nothing taken) when none does."""
    for reading in (_over, _in_front, _round_needle):
        node = reading(cur, start)
        if node is not None:
            return node
        cur.at = start
    return None


def _round_needle(cur: Cursor, start: int) -> Node | None:
    """ "turn the thread twice round the needle"."""
    if cur.low() not in TURNS:
        return None
    cur.at += 1
    cur.accept("the")
    if cur.low() not in THREADS:
        return None
    cur.at += 1
    number = how_many(cur) if cur.kind() == "times" or cur.low(1) == "times" else None
    if cur.low() not in AROUND:
        return None
    cur.at += 1
    cur.accept("the", "right", "right hand")
    if not cur.accept("needle", "pin", "hand needle", "hand pin"):
        return None
    return worked(cur, start, "yo", number or how_many(cur))


def how_many(cur: Cursor) -> Num | None:
    """The "twice", "3 times" or "2" that stands here, taken."""
    number = cur.number()
    if cur.kind() == "times":
        cur.at += 1
        return number
    if cur.kind() == "num" and cur.low(1) in ("times", "time"):
        cur.at += 2
        return number
    if cur.kind() == "num" and cur.low(1) in (*STOPS, ""):
        cur.at += 1
        return number
    return None


def _over(cur: Cursor, start: int) -> Node | None:
    if cur.any_words(OVERS):
        cur.accept(*OVERS)
        if _comes_back(cur):
            return Act(cur.span(start), cur.said(start), Deed.NOTE)
        cur.accept("the needle", "needle", "the pin", "pin", "again")
        number = how_many(cur)
        cur.accept("to increase", "to make a loop", "to make a stitch")
        cur.accept("to make 1", "to make a st", "to make one")
        return worked(cur, start, "yo", number)
    if cur.kind() == "num" and cur.low(1) in ("over", "overs") and cur.low(2) in (*STOPS, ""):
        number = cur.number()
        cur.at += 2
        return worked(cur, start, "yo", number)
    if cur.low() not in ("o", "over") or cur.low(-1) not in (*STOPS, "", "*", "and"):
        return None
    cur.at += 1
    number = how_many(cur)
    if cur.low() not in (*STOPS, "", "and"):
        return None
    return worked(cur, start, "yo", number, cur.low(-1) in ("times", "twice"))


def _in_front(cur: Cursor, start: int) -> Node | None:
    """ "bring the thread in front, slip 1, knit 2 together": an over, since knitting follows."""
    if not cur.accept(*IN_FRONT) or _comes_back(cur):
        return None
    ahead = int(cur.low() in (",", "and"))
    slipped = cur.low(ahead) in ("sl", "slip") and cur.low(ahead + 1) in ("1", "one")
    ahead += (2 + (cur.low(ahead + 2) == ",")) * slipped
    together = not slipped or cur.low(ahead + 2) in ("together", "tog") or cur.low(ahead) != "k"
    if cur.low(ahead) not in ("knit", "k", "narrow", "n", "k2tog") or not together:
        return None
    return worked(cur, start, "yo", None)


def _comes_back(cur: Cursor) -> bool:
    """Whether the yarn only goes to the front while stitches are slipped, and back again."""
    ahead = 1 if cur.low() == "," else 0
    if cur.low(ahead) not in ("sl", "slip", "s"):
        return False
    lows = [cur.low(ahead + n) for n in range(12)]
    if any(low in ("yb", "ybk", "ytb", "yab") for low in lows[:6]):
        return True
    return any(one in THREADS and after == "back" for one, after in pairwise(lows))
