"""How many markers a row lays down: "*k20, k3tog, place marker* around" over 92 stitches -> 4; what
a change gains at each of them.
"""

from __future__ import annotations

from collections.abc import Sequence

from reader.pattern.changes import AT_MARKERS, CHANGES, GAINS, spots_at
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


def at_each_marker(words: str) -> int:
    """The stitches that a change gains at each marker, where only what lies on the needle tells how
    many markers there are; 0 elsewhere.
    """
    found = CHANGES.search(words)
    marked = AT_MARKERS.search(found.group()) if found else None
    if found is None or marked is None or spots_at(marked):
        return 0
    number = int(found["n"][:4]) if found["n"] and found["n"].isdigit() else 1
    each = 1 if marked["two"].lower() in ("before", "after", "at") else 2
    return each * (number if found["way"].lower() in GAINS else -number)
