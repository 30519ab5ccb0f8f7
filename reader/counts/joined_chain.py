"""A chain that was joined: worked into stitch by stitch, or as a ring that holds any number."""

from __future__ import annotations

from collections.abc import Sequence

from reader.counts.fabric import Below
from reader.pattern.tree import Group, Node, Repeat, Skip, Where, Work


def fills_ring(body: Sequence[Node], below: Below, size: int) -> bool:
    """Whether the first row puts more into a chain that was joined than that has stitches, and says
    nothing of where: "8 chain, join. 1st round: 3 chain, 15 treble, join".
    """
    works = [one for one in body if isinstance(one, Work | Group | Repeat | Skip)]
    only = works[0] if len(works) == 1 else None
    joined = [run.name for run in below.runs] == ["ch"] and not below.chained
    plain = isinstance(only, Work) and only.place.where is Where.PLAIN
    number = only.number.at(size) if isinstance(only, Work) and only.number is not None else 0
    return joined and plain and number > (below.stitches or 0)
