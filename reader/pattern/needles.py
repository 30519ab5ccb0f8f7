"""Words that name a needle or the stitches waiting on it: "1st needle", "instep needle", "etc." ->
Act, Work.
"""

from __future__ import annotations

from reader.pattern.cursor import Cursor
from reader.pattern.each_needle import find_each_needle
from reader.pattern.needle_moves import find_move
from reader.pattern.tree import Act, Deed, Node, Place, Where, Work
from reader.terms.forms import stitch_named
from reader.terms.stitches import Craft

WHICH = frozenset(
    ["next", "back", "front", "instep", "heel", "side", "other", "last", "sole", "left", "right",
     "hand", "following", "same", "second", "upper"]
)  # fmt: skip
"""Which needle; ordinals too."""
NEEDLES = ("needle", "needles", "ndl", "pin", "wire")
REST = (
    "etc", "& c", "&c", "and so on", "finish row in pattern", "finish the row in pattern",
    "finish in pattern", "continue in pattern", "cont in pattern", "cont in patt",
    "continue in patt", "complete row in pattern", "complete the row in pattern",
    "complete the round in pattern", "complete row", "complete the row", "finish the row",
    "finish row", "finish the round", "complete round", "complete the round",
    "continue to end of row", "continue to end", "work the rest as before", "rest as before",
    "work rest of row in pattern", "rest in pattern", "the rest in pattern", "rest in patt",
    "finish as before", "finish round in pattern", "pattern to end", "then as before",
    "continue pattern to end", "continue in rib", "finish in rib", "continue the row in pattern",
)  # fmt: skip
"""The rest of the row goes on as it did."""


def find_needle(cur: Cursor) -> Node | None:
    """The needle named here as a heading of what follows, or the rest of the row; None elsewhere.
    """
    if cur.book.craft is not Craft.KNITTING:
        return None
    start = cur.at
    if cur.accept(*REST):
        cur.accept(".")
        stitch = stitch_named("st", Craft.KNITTING)
        place = Place(Where.REST, cur.span(start))
        return Work(cur.span(start), cur.said(start), stitch, None, place) if stitch else None
    node = find_each_needle(cur) or find_move(cur, start) or _named(cur, start)
    if node is None:
        cur.at = start
    return node


def _named(cur: Cursor, start: int) -> Act | None:
    behind = cur.low(-1) in ("", ".", ",", ";", ":", ")", "—", "-", "and", "then")
    if not behind:
        return None
    on = cur.accept("on the", "on", "with the", "with", "over", "across", "over the")
    named = 0
    while cur.kind() == "ord" or cur.low() in WHICH:
        named += 1
        cur.at += 1
    if cur.low() not in NEEDLES:
        if cur.low() == "n" and cur.kind(1) == "num" and cur.low(2) == ":" and not named:
            cur.at += 3
            return Act(cur.span(start), cur.said(start), Deed.NEEDLE)
        return None
    cur.at += 1
    many = 1
    if not named:
        if cur.kind() != "num" or not 0 < cur.peek().value < 6:
            return None
        cur.at += 1
        while cur.low() in (",", "and", "&") and cur.kind(1) == "num" and cur.peek(1).value < 6:
            cur.at += 2
            many += 1
    if cur.low() in (",", ".", ":", "—", "-", ";"):
        while cur.low() in (",", ".", ":", "—", "-", ";"):
            cur.at += 1
        return Act(cur.span(start), cur.said(start), Deed.NEEDLE, str(many) if many > 1 else "")
    works = cur.stitch() is not None or cur.low() in ("pick", "pu", "cast", "bind", "work")
    return Act(cur.span(start), cur.said(start), Deed.NEEDLE) if on and works else None
