"""Squares of a filet net -> what they take and make: a space is a stitch and two chains, a block
three stitches; each stands over one square below.
"""

from __future__ import annotations

from reader.counts.tally import CHAINS, Tally
from reader.counts.worked import Move, MoveKind
from reader.pattern.tree import Mesh


def work_mesh(node: Mesh, tally: Tally) -> None:
    """Works so many squares; each takes the square below it and ends with a stitch on its edge."""
    squares = max(0, min(node.number.at(tally.size), 2_000))
    made, spaces, takes = tally.makes, tally.spaces, tally.walk.takes
    for _ in range(squares):
        tally.walk.take_square()
        if node.solid:
            tally.make(1 + CHAINS, "dc")
            continue
        if not (tally.runs and not tally.runs[-1].is_stitch):
            # Where the turning chain has made the first space already, none is added.
            tally.make_space(CHAINS)
        tally.make(1, "dc")
    tally.spaced = tally.netted = True
    tally.moves.append(Move(
        MoveKind.WORK, node.words, node.span, tally.walk.takes - takes, tally.makes - made,
        tally.spaces - spaces, "dc", max(1, squares),
    ))  # fmt: skip
