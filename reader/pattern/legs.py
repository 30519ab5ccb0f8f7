"""The chains that petals of clusters stand on, "sl st in loop, ch 4, cluster st in same loop, ch 5,
cluster st in same loop, ch 4, sl st in same loop": legs of the first and last cluster, no loops.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from reader.pattern.tree import Act, Chain, Node, Repeat, Where, Work
from reader.terms.stitches import Kind

TALLEST = 5
"""Chains of a leg at most."""


def on_legs(nodes: Sequence[Node]) -> list[Node]:
    """The list with such chains as no loops; other lists as they are."""
    out: list[Node] = []
    for one in nodes:
        if isinstance(one, Repeat):
            one = replace(one, body=tuple(on_legs(one.body)))
        out.append(one)
    listed = [at for at, one in enumerate(out) if not isinstance(one, Act)]
    begun = _petal_begun(out, listed)
    for at, (first, then) in zip(listed[1:], pairwise(listed[1:]), strict=False):
        before = out[listed[listed.index(at) - 1]]
        leads = _slips(before) and _clusters(out[then])
        lands = begun and _clusters(before) and _slips(out[then], Where.SAME)
        chain = out[first]
        if isinstance(chain, Chain) and chain.number.values[0] <= TALLEST and (leads or lands):
            out[first] = replace(chain, back=True)
    return out


def _petal_begun(nodes: Sequence[Node], listed: Sequence[int]) -> bool:
    """Whether a chain leads up from a slip stitch to a cluster somewhere in the list."""
    three = zip(listed, listed[1:], listed[2:], strict=False)
    return any(
        _slips(nodes[a]) and isinstance(nodes[b], Chain) and _clusters(nodes[c])
        for a, b, c in three
    )


def _slips(one: Node, where: Where | None = None) -> bool:
    """Whether a slip stitch into a loop, or into a place told so."""
    slip = isinstance(one, Work) and one.stitch.kind is Kind.SLIP
    if not slip or not isinstance(one, Work):
        return False
    return one.place.where is where if where is not None else one.place.noun in ("sp", "ring")


def _clusters(one: Node) -> bool:
    """Whether a cluster in the place just gone into; the first one of a list that is repeated."""
    if isinstance(one, Repeat):
        works = [x for x in one.body if isinstance(x, Work)]
        return bool(works) and _clusters(works[-1])
    return isinstance(one, Work) and one.stitch.kind is Kind.CLUSTER and (
        one.place.where in (Where.SAME, Where.RING)
    )
