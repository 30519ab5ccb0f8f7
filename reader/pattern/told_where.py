"""Knitted changes told by where they are made: "narrow every sixth stitch", "knit every 4th and 5th
stitch together", "k2tog at the end of the 1st needle and the beginning of the 3rd" -> Shape.
"""

from __future__ import annotations

import re

from reader.pattern.at_spots import at_spots
from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.one_spot import at_one_spot
from reader.pattern.tree import ONE, Node, Place, Shape, Unread, Where, Work
from reader.terms.forms import stitch_named

DECREASES = (
    "knit two together", "take two together", "k two together", "purl two together",
    "pearl two together", "pearl 2 together", "seam two together", "decrease one",
    "knit 2 together", "knit 2 tog", "k 2 together", "k 2 tog", "k2tog", "take 2 together",
    "narrow once", "narrow", "take in", "decrease once", "decrease 1", "decrease", "dec 1", "dec",
    "decreasing once", "decreasing 1", "decreasing", "dec'ing 1", "dec'ing",
    "purl 2 together", "p 2 tog", "p2tog",
)  # fmt: skip
INCREASES = (
    "increase one", "make one", "widen one", "increasing one",
    "increase once", "increase 1", "increase", "inc 1", "inc", "widen", "make 1", "m1",
    "increasing once", "increasing 1", "increasing", "inc'ing 1", "inc'ing", "widening",
)  # fmt: skip
NOUNS = ("sts", "st", "stitches", "stitch")
ENDS = ("beg", "beginning", "end", "start")
BOTH_SIDES = (
    "before and after", "each side of", "on each side of", "at each side of", "either side of",
    "on either side of", "at either side of", "at both sides of", "both sides of",
    "on both sides of",
)  # fmt: skip
ONE_SPOT = ("marker", "seam st", "seam stitch", "seam", "st", "stitch", "rib", "line", "purl st",
            "purl stitch")  # fmt: skip
"""One place in the row, behind "each side of the (middle)"."""
NEEDLES = ("needle", "needles", "pin", "wire")


def told_where(cur: Cursor, start: int) -> Node | None:
    """The change that stands here, taken; None (nothing taken) when none does."""
    for reading in (
        _pairs, _on_each_needle, at_spots, _at_markers, _times_evenly, _every_stitch, _every_nth,
        _at_needle_ends, at_one_spot,
    ):  # fmt: skip
        node = reading(cur, start)
        if node is not None:
            return node
        cur.at = start
    return None


def _pairs(cur: Cursor, start: int) -> Shape | None:
    """ "knit every 4th and 5th stitches together"."""
    if not cur.accept("knit", "k", "purl", "p", "work", "take"):
        return None
    ends = cur.accept("1st and last", "first and last", "the first and last")
    if not ends and _end_pairs(cur):
        return Shape(cur.span(start), cur.said(start), -1, ONE, 2)
    every = 0 if ends else _nth(cur) or _all_round(cur)
    cur.accept(*NOUNS)
    if ends and cur.accept("together", "tog"):
        return Shape(cur.span(start), cur.said(start), -1, ONE, 1)
    if not every or not cur.accept("together", "tog"):
        return None
    return Shape(cur.span(start), cur.said(start), -1, ONE, 1, every)


END_PAIRS = (
    *(f"{the}first {two}{sts} and {again}last {two}{behind}"
      for two in ("2", "two") for the in ("the ", "") for again in ("the ", "")
      for sts in (" sts", " stitches", "")
      for behind in (" sts", " stitches", "")),
)  # fmt: skip


def _on_each_needle(cur: Cursor, start: int) -> Shape | Unread | None:
    """ "Narrow once on every needle": as often as there are needles, where the text tells it."""
    if cur.low(-1) not in ("", ".", ":", ";"):
        # Behind other stitches it is the end of a list that each needle is worked by.
        return None
    gain = -1 if cur.accept(*DECREASES) else 1 if cur.accept(*INCREASES) else 0
    cur.accept("once", "one", "1")
    cur.accept(*NOUNS)
    cur.accept("at the end of", "at the beginning of", "in the middle of", "at end of")
    cur.accept("on", "in", "of")
    if not gain or not cur.accept("each", "every", "each of the", "all the") or not cur.low():
        return None
    told = cur.peek().value if cur.kind() == "num" else cur.book.needles
    cur.at += cur.kind() == "num"
    if not cur.accept(*NEEDLES) or cur.low() not in (*STOPS, ""):
        return None
    if not told:
        return Unread(cur.span(start), cur.said(start))
    return Shape(cur.span(start), cur.said(start), gain, ONE, told)


def _end_pairs(cur: Cursor) -> bool:
    """Takes "the first 2 and the last 2 together", "together the first 2 and last 2"."""
    at = cur.at
    before = cur.accept("together", "tog")
    if cur.accept(*END_PAIRS) and (before or cur.accept("together", "tog")):
        return True
    cur.at = at
    return False


def _all_round(cur: Cursor) -> int:
    """The 5 of "the 4th and 5th (together all round)", taken; 0 where the round is not named."""
    at = cur.at
    cur.accept("the")
    first, last = cur.peek().value, cur.peek(2).value
    paired = cur.kind() == cur.kind(2) == "ord" and cur.low(1) in ("and", "&")
    if paired and last == first + 1 > 2:
        cur.at += 3
        length = cur.low() in NOUNS
        if cur.low(length) in ("together", "tog") and cur.any_words(ROUND, length + 1):
            return last
    cur.at = at
    return 0


ROUND = ("all round", "all around", "round", "around", "all the way round", "all the way around",
         "throughout", "to the end", "all across", "across", "all along")  # fmt: skip


def _at_markers(cur: Cursor, start: int) -> Shape | Unread | None:
    """ "inc 1 st before and after each of the 4 markers"; without a number, as many as lie in the
    row; seams of which nothing tells how many there are cannot be read.
    """
    gain = -1 if cur.accept(*DECREASES) else 1 if cur.accept(*INCREASES, "kfb", "k1fb") else 0
    often = 2 if gain and cur.accept("twice") else 1
    cur.accept("once", "one", "1")
    cur.accept(*NOUNS, "in the st", "in st", "in the sts", "in sts", "in each st", "in the stitch")
    spots = 2 if cur.accept(*BOTH_SIDES) else 1 if cur.accept("before", "after", "at") else 0
    if not gain or not spots:
        return None
    all_of = cur.accept("each of the", "all of the", "each", "every", "all the", "all")
    cur.accept("the")
    number = 2 if cur.accept("both", "both the") else cur.peek().value
    cur.at += cur.kind() == "num"
    if not number and not all_of and cur.low() == "seam" and cur.low(1) in (*STOPS, ""):
        cur.at += 1
        return Shape(cur.span(start), cur.said(start), gain, ONE, often * spots)
    cur.accept("raglan", "seam", "marked", "sleeve", "centre", "center", "middle", "back")
    if not number and not all_of and cur.accept(*ONE_SPOT):
        number = 1
    elif not cur.accept("markers", "marker", "seams", "seam", "sts", "lines", "seam sts"):
        return None
    if cur.low() == "(" and cur.kind(1) == "num" and cur.low(2) == "markers":
        number = cur.peek(1).value
        cur.at += 4
    if not number and MARKED.search(cur.said(start)):
        return Shape(cur.span(start), cur.said(start), gain, ONE, markers=spots)
    if not number:
        return Unread(cur.span(start), cur.said(start))
    return Shape(cur.span(start), cur.said(start), gain, ONE, often * spots * number)


MARKED = re.compile(r"\bmarkers?\b", re.IGNORECASE)


def _times_evenly(cur: Cursor, start: int) -> Shape | None:
    """ "k2tog 6 times evenly spaced around": so many in the row, and the rest as it is."""
    cur.accept("working", "work")
    gain = -1 if cur.accept(*DECREASES) else 1 if cur.accept(*INCREASES) else 0
    number = cur.number()
    times = cur.kind() == "times" or (cur.kind() == "num" and cur.low(1) in ("times", "time"))
    if not gain or number is None or not times:
        return None
    cur.at += 1 if cur.kind() == "times" else 2
    if not cur.accept("evenly spaced", "evenly", "spaced evenly", "at even intervals"):
        return None
    cur.accept("around", "across the row", "across row", "across", "over the row", "in the row",
               "in row", "around the round", "along the row", "across this row")  # fmt: skip
    return Shape(cur.span(start), cur.said(start), gain, number)


def _every_nth(cur: Cursor, start: int) -> Shape | None:
    """ "narrow every sixth stitch", "narrow once in every 8 stitches"."""
    gain = -1 if cur.accept(*DECREASES) else 1 if cur.accept(*INCREASES) else 0
    cur.accept(*NOUNS)
    cur.accept("in", "at", "on")
    every = _nth(cur)
    if not gain or not every or not cur.accept(*NOUNS):
        return None
    return Shape(cur.span(start), cur.said(start), gain, ONE, 1, every)


INCREASING_IN = tuple(
    f"{way}{once} in{to}"
    for way in ("increasing", "widening", "inc", "increase", "widen")
    for once in ("", " once", " 1 st", " 1", " 1 stitch")
    for to in ("", "to")
)


def _every_stitch(cur: Cursor, start: int) -> Work | None:
    """ "increasing in every stitch"."""
    stitch = stitch_named("inc", cur.book.craft)
    told = cur.accept(*INCREASING_IN)
    each = told and cur.accept("every st", "every stitch", "each st", "each stitch")
    if stitch is None or not each:
        return None
    return Work(cur.span(start), cur.said(start), stitch, None, Place(Where.EACH, cur.span(start)))


def _nth(cur: Cursor) -> int:
    """The 8 of "every 7th and 8th", "every 8", taken; 0 where no such words stand here."""
    if not cur.accept("every", "each"):
        return 0
    every = cur.peek().value if cur.kind() in ("ord", "num") else 0
    cur.at += every > 0
    if every and cur.low() in ("and", "&") and cur.kind(1) == "ord":
        every = cur.peek(1).value
        cur.at += 2
    return every if every > 1 else 0


def _at_needle_ends(cur: Cursor, start: int) -> Shape | None:
    """ "k2tog at end of 1st needle and beginning of 3rd needle": once at each place."""
    gain = -1 if cur.accept(*DECREASES) else 1 if cur.accept(*INCREASES) else 0
    cur.accept(*NOUNS)
    spots = 0
    while gain and _at_an_end(cur):
        spots += 1
        if cur.low() in ("and", ",") and cur.low(1) in ("and", "at", "the", *ENDS):
            cur.at += 1 + (cur.low(1) == "and")
    return Shape(cur.span(start), cur.said(start), gain, ONE, spots) if spots > 1 else None


def _at_an_end(cur: Cursor) -> bool:
    """Takes "at the beginning of the 3rd needle"; False (nothing taken) where it does not stand
    here.
    """
    at = cur.at
    cur.accept("at", "on")
    cur.accept("the")
    if cur.accept(*ENDS) and cur.accept("of"):
        cur.accept("the")
        which = cur.kind() == "ord"
        cur.at += which
        if cur.accept(*NEEDLES) and (which or cur.kind() == "num"):
            cur.at += not which
            return True
        if which and cur.low() in (*STOPS, "", "and"):
            # "At the end of the first and beginning of the third needle".
            return True
    cur.at = at
    return False
