"""Which stitch the chain that begins a row stands for, where it is counted as one."""

from __future__ import annotations

from collections.abc import Sequence

from reader.pattern.tree import Group, Node, Repeat, Skip, Where, Work
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


def under_cluster(work: Node | None, height: int = 0) -> int:
    """How many chains stand below a cluster that is worked into the row's first chain, "ch 7,
    cluster in 5th st from hook": a tall stitch; 0 where none is. height: of the whole chain, 0
    where it is not known.
    """
    if not isinstance(work, Work) or work.place.where is not Where.CHAIN:
        return 0
    below = height - work.place.nth + 1 if height else 3
    return below if work.stitch.kind is Kind.CLUSTER and 2 <= below <= 5 else 0


def first_into_row(rest: Sequence[Node]) -> Node | None:
    """The first instruction into the row below: no cluster that stands on the row's first chain."""
    listed = (one for one in rest if isinstance(one, Work | Group | Skip | Repeat))
    return next((one for one in listed if not under_cluster(one)), None)
