"""Stitches cast on again over those that were bound off amid a row: "Knit 30, bind off 20, knit 30.
... cast on 20" closes the neck and begins nothing anew.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from typing import TYPE_CHECKING

from reader.counts.entries import Entry
from reader.pattern.tree import Act, Edge, Node, Num, Work

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

OVER_THEM = re.compile(
    r"\b(?:over|above|across|where|in place of|replac\w+|at|to replace)\b[^.;]*"
    r"\b(?:(?:cast|bound|bind)[- ]?off|button ?holes?|gaps?|those|holes?)\b",
    re.IGNORECASE,
)
"""Behind stitches cast on: over those that were bound off."""
BOUND = re.compile(r"\b(?:cast|bind)(?:ing)?[- ]off|\bbo\b", re.IGNORECASE)
LOOK_BACK = 3
"""Rows before in which they were."""


def over_gaps(ledger: Ledger, entry: Entry) -> Entry:
    """A row that casts on over those bound off, "casting on 2 sts over each buttonhole", with all
    of them; as it is elsewhere.
    """
    edges = [one for one in entry.nodes if isinstance(one, Edge) and one.cast_on]
    if len(edges) != 1 or not ledger.rows or not OVER_THEM.search(edges[0].words):
        return entry
    one, lost = edges[0], _bound_off(ledger)
    each = one.number.at(ledger.size) if one.number is not None else 1
    if not each or lost % each or lost <= each:
        return entry
    all_of_them = replace(one, number=Num((lost,)))
    return replace(entry, nodes=tuple(all_of_them if at is one else at for at in entry.nodes))


def _bound_off(ledger: Ledger) -> int:
    """How many a row just before bound off and none since has cast on again; 0 elsewhere."""
    for row in ledger.rows[: -LOOK_BACK - 1 : -1]:
        if row.count != row.before and row.before and row.count:
            return max(0, row.before - row.count) if BOUND.search(row.written) else 0
    return 0


def closes_gap(
    nodes: Sequence[Node], entries: Sequence[Entry], here: int | None, size: int
) -> bool:
    """Whether a cast on is of as many as a row before it bound off between others, while stitches
    lie on the needle (here), and nothing was cast on since.
    """
    made = _cast_on(nodes, size)
    if not made or not here:
        return False
    for entry in reversed(entries):
        if _cast_on(entry.nodes, size):
            return False
        if _gap(entry.nodes, size) == made:
            return True
    return False


def _cast_on(nodes: Sequence[Node], size: int) -> int:
    """How many are cast on."""
    edges = [one for one in nodes if isinstance(one, Edge) and one.cast_on and one.number]
    return sum(one.number.at(size) for one in edges if one.number is not None)


def _gap(nodes: Sequence[Node], size: int) -> int:
    """How many a row binds off behind stitches that it works; 0 for a row that binds off none."""
    told = [one for one in nodes if not isinstance(one, Act)]
    for before, one in zip([None, *told], told, strict=False):
        if isinstance(one, Edge) and not one.cast_on and one.number and isinstance(before, Work):
            return one.number.at(size)
    return 0
