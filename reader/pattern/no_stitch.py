"""Crochet told by numbers and places alone, as it is spoken: "2 in each", "6 in the loop", "one in
each of three, two in the fourth" -> Work of whatever stitch the row is of.
"""

from __future__ import annotations

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.places import find_place
from reader.pattern.tree import Num, Place, Where, Work
from reader.terms.forms import stitch_named
from reader.terms.stitches import Craft

PLACED = (Where.RING, Where.EACH, Where.REST, Where.NEXT, Where.FIRST, Where.SAME, Where.TO_LAST)
MEASURES = ("in", "inch", "inches", "cm", "from", "diameter", "length", "all", "total")
"""Behind "6 in", no place."""


def of_no_stitch(cur: Cursor, start: int, number: Num) -> Work | None:
    """So many in a place, the number taken already; None (the cursor as it was) for other words."""
    at = cur.at
    stitch = stitch_named("st", Craft.CROCHET)
    if cur.book.craft is not Craft.CROCHET or stitch is None or cur.low(1) in MEASURES:
        return None
    place = nth_of_list(cur) or find_place(cur)
    if place is None or place.where not in PLACED:
        cur.at = at
        return None
    return Work(cur.span(start), cur.said(start), stitch, number, place)


def nth_of_list(cur: Cursor) -> Place | None:
    """ "in the fourth" behind stitches in three, "in the other": the next one; None (nothing
    taken) elsewhere.
    """
    at = cur.at
    placed = cur.accept("in the", "into the")
    if placed and (cur.kind() == "ord" or cur.low() == "other"):
        cur.at += 1
        cur.accept("one", "st", "stitch")
        if cur.low() in (*STOPS, "", "and", ",", "then"):
            return Place(Where.NEXT, cur.span(at), noun="st", text=cur.said(at))
    cur.at = at
    return None
