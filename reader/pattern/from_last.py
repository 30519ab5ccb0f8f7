"""Places counted from the stitch made last: "5 dc in 3rd sc from hook" -> the two before it are
passed.
"""

from __future__ import annotations

import re

from reader.pattern.tree import Group, Node, Num, Place, Skip, Where, Work

FROM_LAST = re.compile(
    r"\bfrom (?:the |your )?(?:hook|needle|(?:last|previous|same) [a-z ]{2,14}|shell|fan)\b",
    re.IGNORECASE,
)


def with_steps(node: Node) -> list[Node]:
    """The node, with a skip before it where its place is so counted over the row below."""
    if not isinstance(node, Work | Group) or node.place.where is not Where.NEXT:
        return [node]
    passed = node.place.nth - 1
    if passed < 1 or FROM_LAST.search(node.place.text) is None:
        return [node]
    span = node.place.span
    return [Skip(span, node.place.text, Place(Where.NEXT, span, Num((passed,)))), node]
