"""Repeats that name a stitch of each group of the row below, "1 dc into the 1st of the 11, 9 chain,
miss 5, 1 dc into the next, 9 chain, repeat": one pass goes over one group, whatever is left of it.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from reader.pattern.tree import Act, Chain, Node, Num, Repeat, Skip, Until, Where, Work
from reader.pattern.understood import BARE
from reader.terms.stitches import Kind

OF_GROUP = re.compile(
    r"\b(?:1st|first|last|middle|cent(?:er|re)|\d(?:st|nd|rd|th)) of (?:the|those) (?P<n>\d+)\b"
    r"(?! ch)",
    re.IGNORECASE,
)
SMALLEST = 3
"""Stitches of a group at least."""


def over_group(again: Repeat) -> Repeat:
    """The repeat with what a pass leaves of its group as passed over; any other as it is."""
    told = [at for at, one in enumerate(again.body) if _group_at(again.body, at)]
    if again.until is not Until.OPEN or len(told) != 1 or again.ending:
        return again
    anchor = again.body[told[0]]
    takes = [_takes(one) for one in again.body]
    if not isinstance(anchor, Work) or any(one is None for one in takes):
        return again
    taken, size = sum(one or 0 for one in takes), _group_at(again.body, told[0])
    # Less than half of a group may be all that a pass is of.
    if not (taken == 1 or 2 * taken > size) or taken >= size:
        return again
    place = replace(anchor.place, where=Where.NEXT, noun="st", nth=0)
    left = replace(place, number=Num((size - taken,)), each=size - taken > 1)
    first = replace(anchor, place=place)
    body = [first if one is anchor else _as_stitch(one) for one in again.body]
    return replace(again, body=(*body, Skip(anchor.span, anchor.words, left)))


def _as_stitch(one: Node) -> Node:
    """Amid a group, loops without chains of their own are its stitches."""
    if isinstance(one, Skip | Work) and one.place.noun == "sp":
        return replace(one, place=replace(one.place, noun="st"))
    return one


def _group_at(body: Sequence[Node], at: int) -> int:
    """How many stitches the group has of which the node is told to go into one; 0 elsewhere."""
    one, before = body[at], body[at - 1] if at else None
    if not isinstance(one, Work) or one.stitch.kind is Kind.SLIP or one.place.each:
        return 0
    found = OF_GROUP.search(one.place.text)
    size = int(found["n"][:3]) if found else 0
    picot = isinstance(before, Chain) and before.number.values[0] == size
    return 0 if size < SMALLEST or picot else size


def _takes(one: Node) -> int | None:
    """How many stitches of the row below a node takes; None where that is not told by number."""
    if isinstance(one, Chain | Act):
        return 0
    if isinstance(one, Skip):
        return None if one.place.chain else one.place.number.values[0]
    if not isinstance(one, Work) or one.place.noun in ("group", "tch"):
        return None
    if one.place.noun == "sp" and BARE.fullmatch(one.place.text) is None:
        return None
    place, number = one.place, one.number.values[0] if one.number else 1
    if place.where in (Where.ELSEWHERE, Where.SAME):
        return 0
    if place.where is Where.PLAIN:
        return number
    return place.number.values[0] if place.where in (Where.NEXT, Where.FIRST, Where.LAST) else None
