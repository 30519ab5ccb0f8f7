"""Instep stitches that lie on the needles with the others: "knit the 24 instep sts" in a round of a
foot works them, and takes none up again.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

from reader.pattern.tree import Act, Deed, Edge, Node, Num, Place, Where, Work
from reader.terms.forms import stitch_named
from reader.terms.stitches import Craft

if TYPE_CHECKING:
    from reader.counts.entries import Entry
    from reader.counts.ledger import Ledger

INSTEP = re.compile(r"\binstep\b", re.IGNORECASE)


def instep_on_hand(ledger: Ledger, entry: Entry) -> Entry:
    """The entry with such stitches knitted, or with their number where they wait and no number is
    told; as it is where they wait, or there is no room for them among what is on hand. Stitches of
    the heel that are knitted once more at a round's end, up to its new beginning, are a note.
    """
    if not any(isinstance(one, Edge) and INSTEP.search(one.words) for one in entry.nodes):
        return entry
    entry = replace(entry, nodes=tuple(_told(ledger, one) for one in entry.nodes))
    joins = [one for one in entry.nodes if isinstance(one, Edge) and one.cast_on]
    begun = ledger.rows or ledger.below.stitches is not None
    here = (ledger.below if begun else ledger.before).stitches
    if here is None or not any(_of_instep(one) for one in joins):
        return entry
    told = sum(takes(one, ledger.size) for one in entry.nodes)
    number = joins[0].number
    if len(joins) > 1 or ledger.waiting:
        return _to_beginning(entry, told - here, ledger.size)
    if not begun or number is None or told + number.at(ledger.size) > here:
        return entry
    nodes = tuple(_knitted(one) if one is joins[0] else one for one in entry.nodes)
    return replace(entry, nodes=nodes)


def _told(ledger: Ledger, one: Node) -> Node:
    """Stitches of the instep told without a number: as many as wait; where none do, as many as lie
    on their needle.
    """
    if not isinstance(one, Edge) or INSTEP.search(one.words) is None or ledger.waiting:
        return one
    lot = next((lot for lot in ledger.lots if lot.name == INSTEP_LOT), None)
    if not one.waited:
        if lot is not None and one.cast_on:
            ledger.lots.remove(lot)
        return one
    if lot is None:
        knitted = _knitted(one)
        unused = Place(Where.UNUSED, one.span)
        return replace(knitted, place=unused) if isinstance(knitted, Work) else one
    ledger.lots.remove(lot)
    return replace(one, number=Num((lot.number,)), waited=False)


INSTEP_LOT = "instep"
"""The name of the stitches that wait while a heel is made."""


def _to_beginning(entry: Entry, over: int, size: int) -> Entry:
    """The entry without so many stitches as its last instruction knits too many."""
    last = entry.nodes[-1] if entry.nodes else None
    plain = isinstance(last, Work) and last.stitch.takes == last.stitch.makes == 1
    if over < 1 or not plain or last is None or takes(last, size) != over:
        return entry
    return replace(entry, nodes=(*entry.nodes[:-1], Act(last.span, last.words, Deed.NOTE)))


def _of_instep(edge: Edge) -> bool:
    return edge.number is not None and INSTEP.search(edge.words) is not None


def takes(node: Node, size: int) -> int:
    """How many stitches a node takes for certain."""
    if not isinstance(node, Work) or node.place.where not in (Where.PLAIN, Where.NEXT):
        return 0
    if node.place.where is Where.NEXT:
        return node.stitch.takes * node.place.number.at(size)
    return node.stitch.takes * (node.number.at(size) if node.number else 1)


def _knitted(edge: Node) -> Node:
    stitch = stitch_named("k", Craft.KNITTING)
    if stitch is None or not isinstance(edge, Edge):
        return edge
    return Work(edge.span, edge.words, stitch, edge.number, Place(Where.PLAIN, edge.span))
