"""Stitches that wait on holders: set aside by one row, taken up again by another."""

from __future__ import annotations

from collections.abc import Sequence

from reader.pattern.holders import ASIDE
from reader.pattern.tree import Edge, Node, Skip


def waiting_after(waiting: tuple[int, ...], nodes: Sequence[Node], size: int) -> tuple[int, ...]:
    """The numbers that wait after a row, in the order they were set aside."""
    left = list(waiting)
    for one in nodes:
        if isinstance(one, Skip) and one.place.text == ASIDE:
            left.append(one.place.number.at(size))
        elif isinstance(one, Edge) and one.waited:
            left.clear()
        elif isinstance(one, Edge) and one.cast_on and one.number is not None:
            taken = one.number.at(size)
            if taken in left:
                left.remove(taken)
    return tuple(left)
