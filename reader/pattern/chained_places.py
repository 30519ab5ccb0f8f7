"""Lists that end in a chain and share the place behind it: "2 dc, ch 1 in first sp" -> Group."""

from __future__ import annotations

from reader.pattern.bundles import OPENINGS, SHARED, joins_list
from reader.pattern.cursor import Cursor
from reader.pattern.passing import find_chain
from reader.pattern.places import find_place
from reader.pattern.tree import Chain, Group, Node, Where, Work


def chain_in_place(cur: Cursor, made: list[Node]) -> Node | None:
    """The chain that stands here, taken; with the stitches before it one group where a place that
    all share follows: "2 dc, ch 1 in first ch-1 sp"; None (nothing taken) where no chain stands.
    """
    chain = find_chain(cur)
    last = made[-1] if made else None
    listed = isinstance(last, Work) and last.place.where is Where.PLAIN and last.number is not None
    if not isinstance(chain, Chain) or not listed or cur.low() not in ("in", "into"):
        return chain
    at = cur.at
    place = find_place(cur)
    if place is None or place.where not in SHARED or place.noun not in OPENINGS:
        cur.at = at
        return chain
    first = len(made)
    while first > 0 and joins_list(made[first - 1]) and not isinstance(made[first - 1], Chain):
        first -= 1
    body = (*made[first:], chain)
    del made[first:]
    words = " ".join(one.words for one in body)
    return Group(body[0].span, f"{words} {place.text}", body, place)
