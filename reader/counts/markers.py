"""How many markers a row lays down: "*k20, k3tog, place marker* around" over 92 stitches -> 4."""

from __future__ import annotations

from collections.abc import Sequence

from reader.pattern.tree import Act, Deed, Node, Repeat

PLACED = ("place", "pm", "put", "set", "marker on")
"""What the words begin with where a marker is laid down, and not slipped or taken away."""


def placed(nodes: Sequence[Node], passes: int) -> int:
    """Markers laid down by a row; those of a repeat once a pass."""
    found = 0
    for node in nodes:
        if isinstance(node, Act) and node.deed is Deed.MARKER:
            found += node.words.lower().startswith(PLACED)
        elif isinstance(node, Repeat):
            found += passes * placed(node.body, 0)
    return found
