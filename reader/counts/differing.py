"""Rows that only say what differs from the row before: "Fifth row, in every fourth", "12 ch worked
as before".
"""

from __future__ import annotations

import re
from dataclasses import replace

from reader.pattern.tree import Chain, Group, Node, Num, Repeat, Shape
from reader.terms.numbers import ordinal_number

ELIDED = re.compile(
    r"^\W*(?:and )?(?:in )?every (\d+(?:st|nd|rd|th)|[a-z]+)(?: st\w*)?\W*$", re.IGNORECASE
)
"""A row that only says in every how manieth stitch."""


def elided(nodes: tuple[Node, ...], words: str, last: tuple[Node, ...]) -> tuple[Node, ...]:
    """ "Fifth row, in every fourth": the increase of the row before (last), at another distance;
    other rows as they are.
    """
    every = ELIDED.match(" ".join(words.split()))
    shape = next((one for one in last if isinstance(one, Shape) and one.every), None)
    if every is None or shape is None:
        return nodes
    digits = re.sub(r"\D", "", every.group(1))
    step = int(digits) if digits else ordinal_number(every.group(1))
    if not step:
        return nodes
    return (replace(shape, every=step, span=nodes[0].span if nodes else shape.span),)


AS_BEFORE = re.compile(
    r"^\W*(?:work(?:ed)? )?(?P<n>\d+)[ -]?ch\w*\.?,? (?:worked |work )?(?:as|like) (?:the )?"
    r"(?:before|last|previous)\b",
    re.IGNORECASE,
)
"""A round of loops again, with other chains."""
BEGINS = re.compile(
    r"\W*(?:(?:work(?:ed)?\s+)?\d+[\s-]?ch|(?:and\s+)?(?:in\s+)?every\s)", re.IGNORECASE
)
"""How rows begin that only say what differs."""


def as_before(nodes: tuple[Node, ...], words: str, last: tuple[Node, ...]) -> tuple[Node, ...]:
    """The row before (last) with so many chains in its loops, where the words say only that; else
    the row as it is.
    """
    if not BEGINS.match(words):
        return nodes
    found = AS_BEFORE.match(" ".join(words.split()))
    if found is None or not any(isinstance(one, Chain | Repeat | Group) for one in last):
        return elided(nodes, words, last)
    return tuple(_rechained(one, Num((int(found["n"][:4]),))) for one in last)


def _rechained(node: Node, number: Num) -> Node:
    if isinstance(node, Chain):
        return replace(node, number=number)
    if isinstance(node, Repeat | Group):
        return replace(node, body=tuple(_rechained(one, number) for one in node.body))
    return node
