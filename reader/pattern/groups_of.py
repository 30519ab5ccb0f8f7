"""So many groups of stitches told by their number, "4 groups of 3 dc in ring with ch 2 between",
"2 groups of 3 tr in corner, ch 3 between them" -> the groups, and the chains that part them.
Wordings are common practice, no source.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.tree import Chain, Group, Node, Num, Place, Repeat, Until, Where, Work
from reader.terms.stitches import Craft, Kind

SETS = ("groups", "sets", "blocks", "bunches", "lots")


def find_groups_of(
    cur: Cursor, made: list[Node], work: Callable[[Cursor, list[Node]], Node | None]
) -> Node | None:
    """Such groups, taken; None (nothing taken) elsewhere. work: reads the stitches of one."""
    counted = cur.kind() == "num" and cur.low(1) in SETS and cur.low(2) == "of"
    if not counted or cur.kind(3) != "num" or cur.book.craft is not Craft.CROCHET:
        return None
    start, number = cur.at, cur.number()
    cur.at += 3
    one = work(cur, made)
    if isinstance(one, Group) and len(one.body) == 2 and isinstance(one.body[1], Chain):
        # A chain behind each, as it is read where groups are parted.
        inner, chains, place = one.body[0], one.body[1].number.values[0], one.place
    elif isinstance(one, Work):
        inner, chains, place = one, one.between, one.place
    else:
        inner, chains, place = None, 0, None
    if number is None or place is None or not isinstance(inner, Work) or inner.number is None or (
        inner.stitch.kind is not Kind.STITCH
    ):
        cur.at = start
        return None
    inner = replace(inner, between=0, place=Place(Where.PLAIN, inner.span))
    _chain_told_again(cur, chains, place)
    return _put(cur, start, number, inner, chains, place)


def _put(cur: Cursor, start: int, number: Num, inner: Work, chains: int, place: Place) -> Node:
    """The groups in the ring, each with its chain; elsewhere the chains lie between them only."""
    span, words = cur.span(start), cur.said(start)
    chain = (Chain(span, f"ch {chains}", Num((chains,))),) if chains else ()
    if place.where is Where.RING:
        ringed = replace(inner, place=place)
        return Repeat(span, words, (ringed, *chain), Until.TIMES, number)
    if place.where is Where.PLAIN:
        return Repeat(span, words, (inner, *chain), Until.TIMES, number)
    less = Num(tuple(max(0, one - 1) for one in number.values))
    body: tuple[Node, ...] = (Repeat(span, words, (inner, *chain), Until.TIMES, less), inner)
    return Group(span, words, body, place)


def _chain_told_again(cur: Cursor, chains: int, place: Place) -> None:
    """Takes the last of the ring's chains where it is told by itself, ", ch 2, join"."""
    if not chains or place.where is not Where.RING:
        return
    ahead = _aside(cur)
    ahead += cur.low(ahead) in (",", ";")
    ahead += cur.low(ahead) in ("and", "ending", "end")
    ahead += cur.low(ahead) in ("with",)
    told = cur.low(ahead) in ("ch", "chain") and cur.kind(ahead + 1) == "num"
    if told and cur.peek(ahead + 1).value == chains and cur.low(ahead + 2) in (*STOPS, ""):
        cur.at += ahead + 2


def _aside(cur: Cursor) -> int:
    """How many tokens the bracket that stands here has, "(ch 3 counts as first dc)"; 0 for none."""
    if cur.low() != "(":
        return 0
    closes = (ahead for ahead in range(1, 20) if cur.low(ahead) == ")")
    return next(closes, -1) + 1
