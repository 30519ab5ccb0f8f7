"""How far stitches go that are worked one in each up to a space: "sc to next ch-2 sp, 2 sc in it"
-> Place; None where nothing is said to go into that space next, as where pieces are joined.
"""

from __future__ import annotations

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.each_of import up_to_opening
from reader.pattern.place_words import CHAIN_NOUNS, SPACE_NOUNS
from reader.pattern.tree import ONE, Num, Place, Where
from reader.terms.stitches import Kind, Stitch

INTO = ("in", "into", "inside")
FAR = 14
"""Words looked at behind the space; what is worked into it is named within fewer."""


def to_opening(cur: Cursor, stitch: Stitch, number: Num | None) -> Place | None:
    """Takes "to next ch-2 sp" right behind the stitch, where one goes into each on the way."""
    start = cur.at
    if stitch.kind is not Kind.STITCH or stitch.name == "sl st" or number not in (None, ONE):
        return None
    cur.accept("across", "over", "evenly", "even", "along")
    if not up_to_opening(cur) or not _filled_next(cur):
        cur.at = start
        return None
    return Place(Where.EACH, cur.span(start), each=True, text=cur.said(start))


def _filled_next(cur: Cursor) -> bool:
    """Whether something goes into a space in the words that come next."""
    ahead = 1 if cur.low() in STOPS else 0
    for at in range(ahead, ahead + FAR):
        if cur.low(at) in (".", ";", "", "*"):
            return False
        if cur.low(at) in INTO:
            return any(_space(cur.low(at + far)) for far in range(1, 5))
    return False


def _space(word: str) -> bool:
    return word in SPACE_NOUNS or word in CHAIN_NOUNS or word in ("it", "corner", "same")
