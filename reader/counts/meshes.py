"""Squares of a filet net -> what they take and make: a space is a stitch and two chains, a block
three stitches; each stands over one square below.
"""

from __future__ import annotations

from reader.counts.fabric import SPACE
from reader.counts.tally import Tally
from reader.counts.worked import Move, MoveKind
from reader.pattern.tree import Mesh

MOST = 2_000
"""Squares of one row; more come of a misprint."""


def _squares_below(tally: Tally) -> int:
    """The open squares that lie ahead in the row below."""
    return min(MOST, tally.walk.count_spaces(lambda run: run.name == SPACE))


def work_mesh(node: Mesh, tally: Tally) -> None:
    """Works so many squares; each takes the square below it and ends with a stitch on its edge."""
    squares = max(0, min(node.number.at(tally.size), MOST))
    made, spaces, takes = tally.makes, tally.spaces, tally.walk.takes
    if node.each:
        squares = _squares_below(tally)
    for _ in range(squares):
        tally.walk.take_square(node.chains)
        if node.solid:
            tally.make(1 + node.chains, node.stitch)
            continue
        if not (tally.runs and not tally.runs[-1].is_stitch):
            # Where the turning chain has made the first space already, none is added.
            tally.make_space(node.chains)
        tally.make(1, node.stitch)
    tally.spaced, tally.netted = True, node.chains
    tally.moves.append(Move(
        MoveKind.WORK, node.words, node.span, tally.walk.takes - takes, tally.makes - made,
        tally.spaces - spaces, node.stitch, max(1, squares),
    ))  # fmt: skip
