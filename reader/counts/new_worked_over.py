"""Stitches cast on where a row begins, and worked in it by number: "cast on 3, k23" over 20."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from reader.counts.fabric import plain
from reader.counts.instep_on_hand import takes
from reader.pattern.tree import Act, Deed, Edge

if TYPE_CHECKING:
    from reader.counts.entries import Entry
    from reader.counts.ledger import Ledger


def new_worked_over(ledger: Ledger, entry: Entry) -> Entry:
    """The entry with that cast on as told only, and the new stitches on hand, where its numbers
    take as many as there were and the new ones; as it is elsewhere.
    """
    works = [one for one in entry.nodes if not isinstance(one, Act)]
    first, here = (works[0] if works else None), ledger.below.stitches
    if not isinstance(first, Edge) or not first.cast_on or first.number is None or here is None:
        return entry
    new = first.number.at(ledger.size)
    told = [takes(one, ledger.size) for one in works[1:] if not isinstance(one, Edge)]
    casts = first.words.lower().startswith(("cast", "co"))
    if not casts or not told or not all(told) or sum(told) != here + new:
        return entry
    ledger.below = plain(here + new, ledger.below.sections)
    noted = Act(first.span, first.words, Deed.NOTE)
    nodes = tuple(noted if one is first else one for one in entry.nodes)
    return replace(entry, nodes=nodes)
