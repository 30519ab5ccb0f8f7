"""How many markers lie in the work: "*k20, k3tog, place marker* around" over 92 stitches -> 4."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from reader.counts.entries import Entry
from reader.counts.fabric import Below
from reader.pattern.tree import Act, Deed, Node, Repeat

PLACED = ("place", "pm")
"""What the words begin with where a marker is laid down, and not slipped or taken away."""


def marked(below: Below, entries: Sequence[Entry]) -> Below:
    """The row below with the markers of the last row that placed any; 0 where none is known."""
    for entry in reversed(entries):
        placed = _placed(entry.nodes, entry.sections)
        if placed:
            return replace(below, markers=placed)
    return below


def _placed(nodes: Sequence[Node], passes: int) -> int:
    """Markers laid down by a row; those of a repeat once a pass."""
    found = 0
    for node in nodes:
        if isinstance(node, Act) and node.deed is Deed.MARKER:
            found += node.words.lower().startswith(PLACED)
        elif isinstance(node, Repeat):
            found += passes * _placed(node.body, 0)
    return found
