"""Crochet told by numbers and places alone, as it is spoken: "2 in each", "6 in the loop", "one in
each of three, two in the fourth" -> Work of whatever stitch the row is of.
"""

from __future__ import annotations

from dataclasses import replace

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.places import find_place
from reader.pattern.tree import Node, Num, Place, Where, Work
from reader.terms.forms import stitch_named
from reader.terms.stitches import Craft, Kind

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


def plain_before(made: list[Node], craft: Craft) -> Work | None:
    """The last stitches worked, as those that "1 in each of 12" behind them are of: behind a
    decrease or an increase the plain ones before it, or what it is made of; None for none.
    """
    works = [one for one in reversed(made) if isinstance(one, Work)]
    if craft is not Craft.CROCHET or not works or works[0].stitch.kind not in CHANGES:
        return works[0] if works else None
    plain = next((one for one in works if one.stitch.kind not in CHANGES), None)
    base = stitch_named(works[0].stitch.base or "st", craft)
    return plain or (replace(works[0], stitch=base, by=None) if base is not None else None)


CHANGES = (Kind.INCREASE, Kind.DECREASE)


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
