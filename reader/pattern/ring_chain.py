"""The chain that begins a round told as a list in the ring, "(ch 3, 11 dc) in ring", "in ring work
ch 3, 2 dc, ...": it stands before what goes into the ring.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from reader.pattern.tree import Act, Chain, Group, Node, Repeat, Where, Work
from reader.terms.stitches import Kind


def before_ring(nodes: Sequence[Node]) -> tuple[Node, ...]:
    """The row with that chain before its list; any other row as it is."""
    first = next((at for at, one in enumerate(nodes) if not isinstance(one, Act)), None)
    if first is None:
        return tuple(nodes)
    group = nodes[first]
    if not isinstance(group, Group) or group.place.where is not Where.RING:
        return tuple(nodes)
    works = [one for one in group.body if not isinstance(one, Act)]
    if len(works) < 2 or not isinstance(works[0], Chain) or _slips(works[-1]):
        # A petal begins and ends at the ring.
        return tuple(nodes)
    if not isinstance(works[1], Work | Repeat | Group):
        return tuple(nodes)
    body = tuple(one for one in group.body if one is not works[0])
    return (*nodes[:first], works[0], replace(group, body=body), *nodes[first + 1 :])


def _slips(node: Node) -> bool:
    return isinstance(node, Work) and node.stitch.kind is Kind.SLIP
