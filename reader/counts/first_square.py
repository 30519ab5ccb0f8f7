"""The space that the chains passed over at the start of a foundation make: "dc in 8th ch from hook"
begins with a stitch, two chains over it, and two that are missed below.
"""

from __future__ import annotations

from collections.abc import Sequence

from reader.pattern.tree import Chain, Node, Repeat, Work


def first_square(work: Work, rest: Sequence[Node], tall: int) -> int:
    """How many chains the first space has, 0 where there is none; tall: chains that stand for the
    stitch. The spaces that follow tell where the number passed over is one more or less.
    """
    passed = work.place.nth - 1 - tall
    inner = (one for node in rest for one in (node.body if isinstance(node, Repeat) else (node,)))
    following = next((one.number.values[0] for one in inner if isinstance(one, Chain)), 0)
    if passed > 1 and 0 < following <= passed and abs(passed - 2 * following) <= 1:
        return following
    return passed // 2 if passed > 2 and passed % 2 == 0 else 0
