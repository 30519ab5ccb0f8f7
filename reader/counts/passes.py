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
    if spread is not None:
        within = node.place.text if isinstance(node, Group) else ""
        moves = [
            move._replace(takes=0 if index else spread, into=move.into or within)
            for index, move in enumerate(moves)
        ]
    moves_added(moves, 0, times, times, node, tally)


def moves_added(
    moves: Sequence[Move], done: int, times: int, of: int, node: Group | Repeat, tally: Tally
) -> bool:
    """Adds the moves of so many passes more, after those done, of so many in all; False when the
    row has too many moves to be opened further. The first pass is opened in any row, since its mend
    is told from it.
    """
    fitting = times
    if moves:
        first = times > 0 and done == 0 and len(tally.moves) + len(moves) <= MOVES
        room = (tally.room - len(tally.moves)) // len(moves)
        fitting = max(int(first), 0 if done == 0 and not first else min(times, room))
    tally.moves += _numbered(moves, done, fitting, of, node)
    if fitting < times:
        tally.moves.append(Move(MoveKind.NOTE, node.words, node.span))
    return fitting >= times


def _numbered(
    moves: Sequence[Move], done: int, times: int, of: int, node: Group | Repeat
) -> Sequence[Move]:
    if of <= 1:
        return [*moves] * times
    # The passes are a move's last field: made whole, since rows of thousands are made move by move.
    whole = [(move[:-1], move.passes) for move in moves]
    out: list[Move] = []
    for number in range(done + 1, done + times + 1):
        here = (Pass(number, of, node.span),)
        out += [
            tuple.__new__(Move, (*told, here + passes if passes else here))
            for told, passes in whole
        ]
    return out
