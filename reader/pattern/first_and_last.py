"""The second of two places told at once: "2 sc in the first and the last st" -> the stitches once
more, in the other place.
"""

from __future__ import annotations

from dataclasses import replace

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.place_words import STITCH_NOUNS
from reader.pattern.tree import Node, Place, Where, Work

ENDS = {"first": Where.FIRST, "1st": Where.FIRST, "last": Where.LAST, "final": Where.LAST}


def last_too(cur: Cursor, made: list[Node]) -> Work | None:
    """ "and (in) the last st" behind a stitch in the first one; None (nothing taken) elsewhere."""
    before = made[-1] if made else None
    if cur.low() not in ("and", "&") or not isinstance(before, Work):
        return None
    if before.place.where not in (Where.FIRST, Where.LAST) or before.place.noun == "sp":
        return None
    start = cur.at
    cur.at += 1
    cur.accept("also", "again")
    cur.accept("in", "into", "on")
    cur.accept("the", "very")
    where = ENDS.get(cur.low())
    if where is None or where is before.place.where:
        cur.at = start
        return None
    cur.at += 1
    found = cur.stitch()
    if found is not None:
        cur.at += found.length
    elif cur.low() in STITCH_NOUNS or cur.low() == "one":
        cur.at += 1
    cur.accept("of the row", "of row", "of the round", "of round", "of each row", "across")
    if cur.low() not in (*STOPS, "", "and", "then"):
        cur.at = start
        return None
    place = Place(where, cur.span(start), before.place.number, before.place.noun)
    return replace(before, span=cur.span(start), words=cur.said(start), place=place)
