"""Which stitch the chain that begins a row stands for, where it is counted as one."""

from __future__ import annotations

from reader.pattern.tree import Work
from reader.terms.stitches import Kind

PLAIN_OF_HEIGHT = {1: "sc", 2: "hdc", 3: "dc", 4: "tr"}


def stands_for(work: Work | None, height: int, space: int) -> str:
    """The stitch's name. work: the first stitch behind the chain of so many, None for none. space:
    how many of the chains are told to make a space.
    """
    name = (work.stitch.base or work.stitch.name) if work is not None else "st"
    tall = work.stitch.height if work is not None and work.stitch.height else 3
    if work is not None and work.stitch.kind in (Kind.CLUSTER, Kind.GROUP):
        # Beside a popcorn the chain stands for a plain stitch of its height.
        name = PLAIN_OF_HEIGHT.get(height, "dc")
    if space and height - space > tall:
        # "ch 5 (counts as dc + ch 2), sc in center of first shell": what the words name, no sc.
        name = PLAIN_OF_HEIGHT.get(height - space, name)
    return name if name not in ("inc", "dec") else "sc"
