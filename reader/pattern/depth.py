"""How deep brackets and repeats lie in one another: what no hand works is not followed, since every
level doubles the work of counting it.
"""

from __future__ import annotations

from collections.abc import Sequence

from reader.pattern.brackets import OPEN_CLOSE
from reader.pattern.tokens import Token
from reader.pattern.tree import Group, Node, Repeat

MOST_DEEP = 7
"""Levels; printed patterns have three or four at most."""


def brackets_deep(tokens: Sequence[Token]) -> int:
    """The most brackets that are open at one place and closed later."""
    deepest = depth = 0
    for token in reversed(tokens):
        # From the end, so that brackets that nothing closes are not counted.
        if token.low in OPEN_CLOSE.values():
            depth += 1
            deepest = max(deepest, depth)
        elif token.low in OPEN_CLOSE and depth:
            depth -= 1
    return deepest


def repeats_deep(nodes: Sequence[Node]) -> int:
    """The most repeats and groups that lie in one another."""
    deepest = 0
    left = [(one, 1) for one in nodes]
    while left:
        node, depth = left.pop()
        if isinstance(node, Repeat | Group):
            deepest = max(deepest, depth)
            left += [(one, depth + 1) for one in node.body]
        if isinstance(node, Repeat):
            left += [(one, depth + 1) for one in node.ending]
    return deepest
