"""Stitches told by their place among others: "the one in 3rd round", "the centre one of the 7 in
last round", "the 6th of the 12".
"""

from __future__ import annotations

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.place_nouns import find_noun, take_after
from reader.pattern.place_words import CHAIN_NOUNS, STITCH_NOUNS
from reader.pattern.tree import Num, Place, Where

MIDDLES = ("center", "centre", "middle")
ONES = ("one", "1")
BEHIND = frozenset(["", "in", "of", "and", "on", "from", "then", *STOPS])
"""What follows a place."""
ROWS = frozenset(["row", "round", "rnd", "last", "previous", "preceding"])


def one_of_them(cur: Cursor) -> Place | None:
    """The stitch so told, taken; None (nothing taken) for other words."""
    at = cur.at
    cur.accept("the")
    place = _of_a_row(cur, at) or _of_so_many(cur, at)
    if place is None:
        cur.at = at
    return place


def _of_a_row(cur: Cursor, start: int) -> Place | None:
    """ "the one in 3rd round", "the 1 of last round"."""
    behind = {cur.low(ahead) for ahead in range(2, 5)}
    if cur.low() not in ONES or cur.low(1) not in ("in", "of", "on", "from") or not behind & ROWS:
        return None
    cur.at += 1
    take_after(cur)
    return Place(Where.NEXT, cur.span(start), noun="st")


def _of_so_many(cur: Cursor, start: int) -> Place | None:
    """ "the centre one of the 7", "the 6th of the 12 in last round": one place, that uses them all.
    """
    if cur.low() not in MIDDLES and (cur.kind() != "ord" or cur.peek().value < 2):
        return None
    cur.at += 1
    cur.accept("one", "1", *STITCH_NOUNS) or find_noun(cur)
    if not cur.accept("of the", "of those", "of these"):
        return None
    number = cur.peek().value if cur.kind() == "num" else 0
    cur.at += 1
    if number < 2 or cur.low() in CHAIN_NOUNS:
        return None
    noun = find_noun(cur)
    if cur.low() not in BEHIND or noun in ("group", "sp"):
        return None
    take_after(cur)
    return Place(Where.NEXT, cur.span(start), Num((number,)), noun or "st")
