"""So many stitches spread over one place, "12 sc evenly in ring", "90 sc evenly on ch": "evenly"
is no place of its own.
"""

from __future__ import annotations

from dataclasses import replace

from reader.pattern.along_edge import EVENLY
from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.places import find_place
from reader.pattern.tree import ONE, Num, Place, Where

WAYS = (
    "in", "into", "on", "onto", "over", "along", "across", "around", "round", "down", "through",
    "to", "under",
)  # fmt: skip
WHOLE = frozenset(
    ["the", "this", "your", "whole", "entire", "length", "of", "all", "last", "previous", "row",
     "rnd", "round", "below", "chain", "ch", "foundation", "starting", "beginning", "base", "edge",
     "sts", "stitches", "st", "remaining", "rem", "end"]
)  # fmt: skip
"""Words of which a row or chain as a whole may be named."""
OPENINGS = ("sp", "corner")
MANY = 2
"""Stitches, at least, that can be spread."""


def evenly_in(cur: Cursor, number: Num | None) -> Place | None:
    """The place behind "evenly", taken with it; None (nothing taken) where no number is told, no
    place follows, or each of several places takes as many.
    """
    if number is None or number.values[0] < MANY:
        return None
    start = cur.at
    if not cur.accept(*EVENLY) or cur.low() not in WAYS:
        cur.at = start
        return None
    if _named_whole(cur):
        return Place(Where.REST, cur.span(start), text=cur.said(start))
    place = find_place(cur)
    if place is None or place.where in (Where.PLAIN, Where.TO_LAST) or "each" in place.text.lower():
        cur.at = start
        return None
    span, text = cur.span(start), cur.said(start)
    one_opening = place.where is Where.NEXT and place.noun in OPENINGS and place.number == ONE
    if place.where in (Where.RING, Where.SAME, Where.ELSEWHERE, Where.CHAIN) or one_opening:
        return replace(place, span=span, text=text)
    if place.where is Where.NEXT and place.number != ONE and place.number != number:
        cur.at = start
        return None
    return Place(Where.REST, span, text=text)


def _named_whole(cur: Cursor) -> bool:
    """Takes "over the last row", "along the whole length of the chain", "across the 60 dc"."""
    at = cur.at
    cur.at += 1
    while cur.low() in WHOLE or cur.kind() == "num":
        cur.at += 1
    named = cur.stitch() if cur.kind(-1) == "num" else None
    cur.at += named.length if named else 0
    if cur.at > at + 1 and cur.low() in (*STOPS, "", "and", "then"):
        return True
    cur.at = at
    return False
