"""A knitted row with a change at one spot of it, told behind: "knit across, narrowing in the
middle", "purl all, increasing twice at the end", "narrowing three times at equal distances".
"""

from __future__ import annotations

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.tree import Num, Shape, Unread

LOSING = (
    "narrowing", "decreasing", "dec'ing", "taking in",
    *(f"{verb} 2 tog{ether}" for verb in ("taking", "knitting", "purling", "pearling", "seaming")
      for ether in ("ether", "")),
)  # fmt: skip
GAINING = ("increasing", "widening", "inc'ing", "making", "raising", "adding")
SPOT = ("middle", "centre", "center", "beginning", "beg", "start", "commencement", "end")
SPREAD = tuple(
    f"{how} {apart}" for how in ("equal", "regular", "even")
    for apart in ("distances", "intervals", "distances apart", "spaces")
)  # fmt: skip
NOUNS = ("sts", "st", "stitches", "stitch")
ROWS = ("row", "round", "rnd", "work", "needle")


def at_one_spot(cur: Cursor, start: int) -> Shape | Unread | None:
    """The change that stands here, taken; None where none does, or where it is made at every
    needle or at both ends; between stitches, it cannot be read how often.
    """
    gain = -1 if cur.accept(*LOSING) else 1 if cur.accept(*GAINING) else 0
    if not gain:
        return None
    number = _often(cur)
    cur.accept(*NOUNS)
    number = _often(cur, number)
    if cur.accept("between each", "between every", "between all the", "between the"):
        # Whether before the first of them or behind the last, too, nobody says.
        cur.accept(*NOUNS)
        return Unread(cur.span(start), cur.said(start)) if _ends(cur) else None
    if not _spot(cur) or not _ends(cur):
        return None
    return Shape(cur.span(start), cur.said(start), gain, number)


def _ends(cur: Cursor) -> bool:
    return cur.low() in (*STOPS, "", "then")


def _often(cur: Cursor, number: Num | None = None) -> Num:
    """The "twice", "3 times", "2" that stands here, taken; else what was told before, or 1."""
    here = cur.number()
    if here is None or cur.kind() not in ("num", "times"):
        return number or Num((1,))
    times = cur.kind() == "times"
    cur.at += 1
    if not times:
        cur.accept("times", "time")
    return here


def _spot(cur: Cursor) -> bool:
    cur.accept("at", "in", "on")
    cur.accept("the")
    if cur.accept(*SPREAD):
        return True
    cur.accept("very", "exact")
    if not cur.accept(*SPOT):
        return False
    cur.accept(*NOUNS, "one")
    if cur.accept("of"):
        cur.accept("the", "this")
        return bool(cur.accept(*ROWS))
    return True
