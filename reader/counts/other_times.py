"""A row that is quoted with one of its lists worked as often as is told: "as 8th, with (ch 7, sc in
next loop) 3 times", "same as last row, having 3 loops across each pineapple".
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from reader.counts.entries import of_loops
from reader.pattern.tree import Chain, Node, Num, Repeat, Until, Work

LOOPS_ACROSS = re.compile(
    r"\b(?:having|with|working|making|there will be) (?:only )?"
    r"(?P<n>\d{1,2})(?:[- ](?:ch[- ]?\d+|\d+[- ]ch))? ?(?:loops?|lps?|sps?|spaces?|arches)"
    r" (?:across|on|in|over|at|to|for) (?:(?:top of )?(?:each|every|all|the) )?(?:\w+ ?){1,3}?"
    r"(?:,? and (?:having |with )?ch[- ]?\d+ between (?:the )?[a-z ]{3,20})?\W*$",
    re.IGNORECASE,
)
"""How many loops a row that is quoted has in each place; other chains change no count."""


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


def with_loops(nodes: tuple[Node, ...], rest: str) -> tuple[Node, ...] | None:
    """The row with so many loops in each place as the words behind it tell; None where they tell
    none, or where it has no such list.
    """
    told = LOOPS_ACROSS.search(" ".join(rest.split()))
    found = tuple(_with_so_many(one, int(told["n"]), False) for one in nodes) if told else nodes
    return found if found != nodes else None


def _with_so_many(node: Node, loops: int, inside: bool) -> Node:
    if not isinstance(node, Repeat):
        return node
    if not inside or node.until is Until.OPEN or not of_loops(node):
        return replace(node, body=tuple(_with_so_many(one, loops, True) for one in node.body))
    more = node.until in (Until.AGAIN, Until.MORE)
    return replace(node, number=Num((max(1, loops - more),))) if loops > more else node
