"""Work that goes on along another edge: the chain's other side, row ends, an opening -> Act."""

from __future__ import annotations

from reader.pattern.cursor import Cursor
from reader.pattern.phrasing import act_here, take_phrase
from reader.pattern.tree import Deed, Node

SIDES = ("side", "edge", "sides")
ROW_ENDS = ("row ends", "ends of rows", "ends of the rows", "other row ends")
EDGES = ("side", "edge", "sides", *ROW_ENDS, "opening", "neck", "neckline")
EDGE_WORDS = frozenset(
    [
        "one",
        "each",
        "long",
        "short",
        "outer",
        "front",
        "neck",
        "armhole",
        "top",
        "bottom",
        "left",
        "right",
        "lower",
        "upper",
    ]
)


def other_side(cur: Cursor, start: int) -> Node | None:
    """ "working along opposite side of ch"."""
    cur.accept("rotate", "turn", "continue", "then")
    cur.accept("to")
    verb = cur.accept("working", "work", "continue")
    if not cur.accept("on", "along", "across", "down", "in", "into", "over", "up", "around"):
        return None
    cur.accept("the")
    other = cur.accept("other", "opposite", "second", "remaining")
    while verb and cur.low() in EDGE_WORDS:
        cur.at += 1
    rows = not other and cur.any_words(ROW_ENDS)
    if not (other or verb or rows) or not cur.accept(*(SIDES if other else EDGES)):
        return None
    if cur.accept("of"):
        cur.accept("the", "your")
        cur.accept("foundation", "starting", "beginning", "beg", "original")
        if not cur.accept("ch", "chain"):
            take_phrase(cur)
    return act_here(cur, start, Deed.OTHER_SIDE)
