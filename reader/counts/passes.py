"""The passes of a repeat, or of a group in many places, as moves: each numbered, as far as a row's
room for moves goes.
"""

from __future__ import annotations

from collections.abc import Sequence

from reader.counts.tally import MOVES, Tally
from reader.counts.worked import Move, MoveKind, Pass
from reader.pattern.tree import Group, Repeat


def repeated(
    moves: Sequence[Move], times: int, node: Group | Repeat, tally: Tally, spread: int | None = None
) -> None:
    """Adds the moves of a body `times` over, each pass numbered; spread: stitches each pass uses
    (for a group).
    """
    for number in range(1, 1 + max(0, times)):
        if not one_pass(moves, number, times, node, tally, spread):
            return


def one_pass(
    moves: Sequence[Move],
    number: int,
    of: int,
    node: Group | Repeat,
    tally: Tally,
    spread: int | None = None,
) -> bool:
    """Adds the moves of one pass; False when the row has too many moves to be opened further. The
    first pass is opened in any row, since its mend is told from it.
    """
    if len(tally.moves) + len(moves) > (MOVES if number == 1 else tally.room):
        tally.moves.append(Move(MoveKind.NOTE, node.words, node.span))
        return False
    here = (Pass(number, of, node.span),) if of > 1 else ()
    if not here and spread is None:
        tally.moves += moves
        return True
    # The passes are a move's last field: made whole, since rows of thousands are made move by move.
    told = [Move._make((*move[:-1], (*here, *move.passes))) for move in moves]
    if spread is not None:
        within = node.place.text if isinstance(node, Group) else ""
        told = [
            move._replace(takes=0 if index else spread, into=move.into or within)
            for index, move in enumerate(told)
        ]
    tally.moves += told
    return True
