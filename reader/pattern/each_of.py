"""Of how many "each" is said: "in each next 2 sts", "in each st and sp to next corner"."""

from __future__ import annotations

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.place_nouns import find_noun_chain
from reader.pattern.place_words import STITCH_NOUNS
from reader.pattern.up_to import to_last_of
from reader.terms.stitches import Craft

AHEAD = ("next", "following", "foll", "remaining", "rem")
INTO = ("under", "over", "in", "into", "on", "upon")
TOGETHER = ("tog", "together")


def each_of_several(cur: Cursor) -> bool:
    """Whether "each" is of so many without its "of": "in each next 2 sts", "in each 5 sts"."""
    several = cur.kind() == "num" and cur.low(1) in STITCH_NOUNS and cur.low(2) not in TOGETHER
    crochets = cur.book.craft is Craft.CROCHET
    return (several and crochets) or (cur.low() in AHEAD and cur.kind(1) == "num")


HERE = ("this", "that", "same", "next", "first", "1st")


def first_and_each(cur: Cursor) -> bool:
    """Takes "this and" before "each": "in this and every following st" is in all of them."""
    at = cur.at
    cur.accept("the")
    here = cur.book.craft is Craft.CROCHET and cur.low() in HERE and cur.low(1) in ("and", "&")
    cur.at += 2 if here else 0
    cur.accept("in", "into")
    if not here or cur.low() not in ("each", "every") or cur.low(1) == "other":
        cur.at = at
        return False
    return True


def up_to_opening(cur: Cursor) -> bool:
    """Takes "to next ch-2 sp" behind stitches: the next instruction tells what goes into it."""
    at = cur.at
    if cur.book.craft is not Craft.CROCHET or not cur.accept("to", "up to", "until", "till"):
        return False
    cur.accept("the", "you reach the", "you get to the")
    if cur.low() in ("next", "first", "last", "following", "second") or cur.kind() == "ord":
        cur.at += 1
    noun, _ = find_noun_chain(cur)
    if noun != "sp" or cur.low() not in (*STOPS, "", "and", "then", "*"):
        cur.at = at
    return cur.at > at


def up_to_corner(cur: Cursor) -> None:
    """Takes "to next corner" behind stitches and spaces: how far they go is told by what is worked
    into that corner.
    """
    at = cur.at
    found = to_last_of(cur)
    if found is None or found.noun != "corner":
        cur.at = at
