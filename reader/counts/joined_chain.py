"""A chain that was joined: worked into stitch by stitch, or as a ring that holds any number."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from reader.counts.fabric import Below
from reader.pattern.tree import Chain, Group, Node, Repeat, Skip, Until, Where, Work


def fills_ring(body: Sequence[Node], below: Below, size: int) -> bool:
    """Whether the first row puts more into a chain that was joined than that has stitches, and says
    nothing of where: "8 chain, join. 1st round: 3 chain, 15 treble, join".
    """
    works = [one for one in body if isinstance(one, Work | Group | Repeat | Skip)]
    only = works[0] if len(works) == 1 else None
    joined = [run.name for run in below.runs] == ["ch"] and not below.chained
    if joined and works and isinstance(works[0], Repeat):
        return _loops_into(works[0], below, size)
    plain = isinstance(only, Work) and only.place.where is Where.PLAIN
    number = only.number.at(size) if isinstance(only, Work) and only.number is not None else 0
    return joined and plain and number > (below.stitches or 0)


def _loops_into(loops: Repeat, below: Below, size: int) -> bool:
    """Whether loops are told so often as the chain has no stitches for: "8 chain, unite it. 1st
    round: 1 double, 5 chain, repeat 4 times more".
    """
    more = {Until.TIMES: 0, Until.MORE: 1, Until.AGAIN: 1}.get(loops.until)
    stitches = [one for one in loops.body if isinstance(one, Work)]
    if more is None or len(loops.body) < 2 or not isinstance(loops.body[-1], Chain):
        return False
    if len(stitches) + 1 < len(loops.body) or loops.ending:
        return False
    plain = all(one.place.where is Where.PLAIN for one in stitches)
    told = sum(one.number.at(size) if one.number else 1 for one in stitches)
    times = loops.number.at(size) + more
    return plain and told * times not in (0, below.stitches)


def in_ring(nodes: Sequence[Node], below: Below) -> Sequence[Node]:
    """The row with "1 dc on the 4 chain" as into the ring, where it is of so many chains."""
    if not below.ring:
        return nodes
    out: list[Node] = []
    for one in nodes:
        if isinstance(one, Repeat):
            body, ending = in_ring(one.body, below), in_ring(one.ending, below)
            one = replace(one, body=tuple(body), ending=tuple(ending))
        elif isinstance(one, Work | Group) and one.place.noun == "sp":
            ring = one.place.chain == below.ring and one.place.where is Where.NEXT
            one = replace(one, place=replace(one.place, where=Where.RING)) if ring else one
        out.append(one)
    return tuple(out)
