"""A stitch in the chain just made that closes a picot: "ch 6, s c in 6th st from hook for picot" ->
a slip stitch, since it is none of the row's.
"""

from __future__ import annotations

import re
from dataclasses import replace

from reader.pattern.cursor import Cursor
from reader.pattern.tree import Node, Where, Work
from reader.terms.forms import stitch_named
from reader.terms.stitches import Craft

FOR_PICOT = re.compile(
    r"[,(]? ?(?:for|to form|to make|forming|making|to complete|thus forming|=)(?: a| the| one| 1)?"
    r" ?(?:\d[- ]?ch )?picots?\b|\( ?(?:a )?picots?(?: made)? ?\)"
)


def closing_picot(cur: Cursor, node: Node | None) -> Node | None:
    """The node, as a slip stitch where the words behind it say that it makes a picot of the chain.
    """
    if not isinstance(node, Work) or node.place.where is not Where.CHAIN or node.place.nth < 2:
        return node
    behind = " ".join(cur.low(ahead) for ahead in range(7))
    slip = stitch_named("sl st", Craft.CROCHET)
    if slip is None or node.stitch.craft is not Craft.CROCHET or not FOR_PICOT.match(behind):
        return node
    return replace(node, stitch=slip)
