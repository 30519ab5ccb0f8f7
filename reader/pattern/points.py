"""Points and leaves: a chain, and stitches worked back along it, "7 chain, miss the 1st, work into
successive loops 2 dc and 4 tr, 1 dc in the next stitch": the stitches go into that chain, and
nothing of the row below.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from reader.pattern.tree import ONE, Act, Chain, Deed, Group, Node, Place, Repeat, Skip, Where, Work
from reader.terms.stitches import Kind

SHORTEST = 3
"""Chains of a point."""
ALONG = "along the chain"


def points(nodes: Sequence[Node]) -> list[Node]:
    """The list with the stitches of its points as worked into their chains; a chain of which they
    would not use every stitch is left as it is.
    """
    if not any(isinstance(one, Chain | Repeat) for one in nodes):
        return list(nodes)
    out: list[Node] = []
    for one in nodes:
        if isinstance(one, Repeat):
            last = out[-1] if out else None
            begun = (last, *one.body) if isinstance(last, Chain) else one.body
            body = _points(begun, True)
            if begun is not one.body and body[0] == last:
                # The chain before is none of its own.
                body = _points(one.body, True)
            elif begun is not one.body:
                out.pop()
            one = replace(one, body=tuple(body), ending=tuple(_points(one.ending, True)))
        out.append(one)
    return _points(out, False)


def _points(nodes: Sequence[Node], repeated: bool) -> list[Node]:
    out = list(nodes)
    at = 0
    while at < len(out):
        one = out[at]
        if isinstance(one, Chain) and not one.back and one.number.values[0] >= SHORTEST:
            told = _one_by_one(out[at + 1 :])
            end = _end_of_point(one, told)
            others = [*out[:at], *told[end:]]
            if end and (repeated or any(isinstance(x, Work | Repeat) for x in others)):
                out[at:] = [replace(one, back=True), *map(_along, told[:end]), *told[end:]]
        at += 1
    return out


def _one_by_one(nodes: Sequence[Node]) -> list[Node]:
    """The list with its first group as stitches of which the last alone has a place, where the
    words may mean it so.
    """
    for at, one in enumerate(nodes):
        if isinstance(one, Group) and one.maybe and isinstance(one.body[-1], Work):
            last = replace(one.body[-1], place=one.place)
            return [*nodes[:at], *one.body[:-1], last, *nodes[at + 1 :]]
    return list(nodes)


def _end_of_point(chain: Chain, nodes: Sequence[Node]) -> int:
    """Where the stitches along a chain end in what follows it, 0 where none go along it."""
    left, missed = chain.number.values[0], False
    for end, one in enumerate(nodes, 1):
        if isinstance(one, Skip) and not missed:
            if not _of_the_chain(one, chain):
                return 0
            missed = True
            left -= 1
        elif isinstance(one, Act):
            if one.deed not in (Deed.NOTE, Deed.TURN):
                return 0
        elif missed and isinstance(one, Work) and _goes_on(one):
            left -= one.number.values[0] if one.number else 1
        else:
            return 0
        if missed and left <= 0:
            return end if left == 0 and isinstance(one, Work) else 0
    return 0


END_MISSED = re.compile(
    r"\b(?:first|1st|last)(?: (?:one|st|stitch|ch|chain|loop))?$", re.IGNORECASE
)
LONG = 4
"""Chains that are no turning chain of a short stitch."""


def _of_the_chain(one: Skip, chain: Chain) -> bool:
    """Whether it is the chain's end that is missed, and no stitch of the row."""
    if one.place.number != ONE:
        return False
    long = chain.number.values[0] >= LONG
    return END_MISSED.search(one.words) is not None or (one.place.noun == "ch" and long)


def _goes_on(one: Work) -> bool:
    """Whether stitches go into what comes next, one each."""
    return one.place.where is Where.PLAIN and one.stitch.kind is not Kind.SLIP and (
        one.stitch.takes == one.stitch.makes == 1
    )


def _along(one: Node) -> Node:
    if isinstance(one, Skip):
        return Act(one.span, one.words, Deed.NOTE)
    if not isinstance(one, Work):
        return one
    place = Place(Where.ELSEWHERE, one.place.span, noun="ch", text=ALONG)
    return replace(one, place=place)
