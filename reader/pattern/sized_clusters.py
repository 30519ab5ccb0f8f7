"""Clusters that draw several stitches together: "3-tr cluster over next 3 tr" -> one stitch that
uses three.
"""

from __future__ import annotations

import re
from dataclasses import replace

from reader.pattern.tree import Node, Where, Work
from reader.terms.stitches import Kind

SIZED = re.compile(r"(?:an? |another )?([2-9])\b.*\b(?:cluster|cl)\b", re.IGNORECASE)
"""A cluster called by how many stitches it has."""


def over_several(node: Node | None) -> Node | None:
    """The cluster as one that uses as many stitches as it has, where it goes over so many."""
    if not isinstance(node, Work) or node.stitch.kind is not Kind.CLUSTER:
        return node
    place, told = node.place, SIZED.match(node.words)
    if told is None or place.where is not Where.NEXT or place.noun == "sp":
        return node
    takes = place.number.values[0]
    if takes != int(told.group(1)) or node.number is not None:
        return node
    stitch = replace(node.stitch, takes=takes, makes=1, kind=Kind.DECREASE)
    return replace(node, stitch=stitch, place=replace(place, where=Where.PLAIN))
