"""A row that is quoted with one of its lists worked oftener: "as 8th, with (ch 7, sc in next loop)
3 times".
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from reader.pattern.tree import Chain, Node, Repeat, Until, Work


def with_times(nodes: tuple[Node, ...], listed: Sequence[Node]) -> tuple[Node, ...] | None:
    """The row with the list that stands in `listed` worked as often as there; None where it has no
    such list.
    """
    other = next((one for one in listed if isinstance(one, Repeat)), None)
    if other is None:
        return None
    found = tuple(_retimed(one, other) for one in nodes)
    return found if found != nodes else None


def _retimed(node: Node, other: Repeat) -> Node:
    if not isinstance(node, Repeat):
        return node
    if node.until is Until.TIMES and _alike(node.body, other.body):
        return replace(node, number=other.number)
    return replace(node, body=tuple(_retimed(one, other) for one in node.body))


def _alike(one: Sequence[Node], other: Sequence[Node]) -> bool:
    """Whether two lists work the same stitches."""
    return [_signed(node) for node in one] == [_signed(node) for node in other]


def _signed(node: Node) -> tuple[object, ...]:
    if isinstance(node, Chain):
        return ("ch", node.number.values)
    if isinstance(node, Work):
        return (node.stitch.name, node.number and node.number.values, node.place.noun)
    return (type(node).__name__,)
