"""Instep stitches that lie on the needles with the others: "knit the 24 instep sts" in a round of a
foot works them, and takes none up again.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

from reader.pattern.tree import Edge, Node, Place, Where, Work
from reader.terms.forms import stitch_named
from reader.terms.stitches import Craft

if TYPE_CHECKING:
    from reader.counts.entries import Entry
    from reader.counts.ledger import Ledger

INSTEP = re.compile(r"\binstep\b", re.IGNORECASE)


def instep_on_hand(ledger: Ledger, entry: Entry) -> Entry:
    """The entry with such stitches knitted; as it is where they wait, or there is no room for
    them among what is on hand.
    """
    joins = [one for one in entry.nodes if isinstance(one, Edge) and one.cast_on]
    here = ledger.below.stitches
    if len(joins) != 1 or here is None or ledger.waiting or not _of_instep(joins[0]):
        return entry
    size = ledger.size
    told = sum(_takes(one, size) for one in entry.nodes)
    number = joins[0].number
    if number is None or told + number.at(size) > here:
        return entry
    nodes = tuple(_knitted(one) if one is joins[0] else one for one in entry.nodes)
    return replace(entry, nodes=nodes)


def _of_instep(edge: Edge) -> bool:
    return edge.number is not None and INSTEP.search(edge.words) is not None


def _takes(node: Node, size: int) -> int:
    """How many stitches a node takes for certain."""
    if not isinstance(node, Work) or node.place.where is not Where.PLAIN:
        return 0
    return node.stitch.takes * (node.number.at(size) if node.number else 1)


def _knitted(edge: Node) -> Node:
    stitch = stitch_named("k", Craft.KNITTING)
    if stitch is None or not isinstance(edge, Edge):
        return edge
    return Work(edge.span, edge.words, stitch, edge.number, Place(Where.PLAIN, edge.span))
