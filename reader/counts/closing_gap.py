"""Stitches cast on again over those that were bound off amid a row: "Knit 30, bind off 20, knit 30.
... cast on 20" closes the neck and begins nothing anew.
"""

from __future__ import annotations

from collections.abc import Sequence

from reader.counts.entries import Entry
from reader.pattern.tree import Act, Edge, Node, Work


def closes_gap(
    nodes: Sequence[Node], entries: Sequence[Entry], here: int | None, size: int
) -> bool:
    """Whether a cast on is of as many as a row before it bound off between others, while stitches
    lie on the needle (here), and nothing was cast on since.
    """
    made = _cast_on(nodes, size)
    if not made or not here:
        return False
    for entry in reversed(entries):
        if _cast_on(entry.nodes, size):
            return False
        if _gap(entry.nodes, size) == made:
            return True
    return False


def _cast_on(nodes: Sequence[Node], size: int) -> int:
    """How many are cast on."""
    edges = [one for one in nodes if isinstance(one, Edge) and one.cast_on and one.number]
    return sum(one.number.at(size) for one in edges if one.number is not None)


def _gap(nodes: Sequence[Node], size: int) -> int:
    """How many a row binds off behind stitches that it works; 0 for a row that binds off none."""
    told = [one for one in nodes if not isinstance(one, Act)]
    for before, one in zip([None, *told], told, strict=False):
        if isinstance(one, Edge) and not one.cast_on and one.number and isinstance(before, Work):
            return one.number.at(size)
    return 0
