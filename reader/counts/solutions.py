"""Rows solved already: the same words over the same row below are worked once, as they stand in
parts alike and in rounds that neither grow nor shrink.
"""

from __future__ import annotations

from collections.abc import Sequence

from reader.counts.entries import Entry
from reader.counts.fabric import Below, rings_apart
from reader.counts.solve import best
from reader.counts.solved import Solved
from reader.counts.tally import Tally
from reader.counts.whole_chain import over_whole_chain
from reader.counts.worked import Move, MoveKind, Pass
from reader.pattern.read_once import Copied
from reader.pattern.tree import Node
from reader.text.span import Span

MOST = 250
"""Rows kept; when there are more, those that were solved first are forgotten."""


class Solutions:
    """What was found for each row, where the first of its words stands."""

    def __init__(self) -> None:
        self.kept: dict[tuple[object, ...], tuple[tuple[Node, ...], Solved]] = {}

    def best(
        self,
        entry: Entry,
        below: Below,
        chains: Sequence[bool | None],
        size: int,
        carried: int,
        total: tuple[int | None, str],
        room: int,
    ) -> Solved:
        """The best reading of the row, as in solve.best; its moves stand where those of the first
        row of its words do (see moves_of).
        """
        copied = _copied(entry)
        nodes = copied.first if copied is not None else entry.nodes
        # The instructions are told by their identity: they are kept, so that it stays theirs.
        key = (id(nodes), below, tuple(chains), size, carried, total, room)
        kept = self.kept.get(key)
        if kept is not None:
            return kept[1]
        one = best(nodes, below, chains, size, carried, *total, room)
        mark = entry.row.mark
        is_round = mark is not None and mark.is_round is True
        whole = over_whole_chain(nodes, below, is_round) if one.count is None else None
        if whole is not None:
            over = best(nodes, whole, chains, size, carried, *total, room)
            one = over if over.fits is True and over.count is not None else one
        rings = rings_apart(below) if not _whole(one) else None
        if rings is not None:
            over = best(nodes, rings, chains, size, carried, *total, room)
            one = over if _whole(over) else one
        one.tally.kept.worked.clear()
        if len(self.kept) >= MOST:
            del self.kept[next(iter(self.kept))]
        self.kept[key] = nodes, one
        return one


def _whole(one: Solved) -> bool:
    """Whether a round uses every loop of the row below, in whole passes; the stitch between the
    last loop and the first may be left.
    """
    walk = one.tally.walk
    found = one.fits is True or (one.left <= 1 and not (walk.lacking or walk.short))
    return found and not walk.spaces and not one.tally.parted


def moves_of(solved: Solved, entry: Entry) -> tuple[Move, ...]:
    """The moves of a row that Solutions solved, where the row stands."""
    moves, copied = solved.tally.moves, _copied(entry)
    if copied is None or not copied.by:
        return tuple(moves)
    there = _Farther(copied.by, copied.lines)
    passes: dict[int, tuple[Pass, ...]] = {}
    out, new = [], tuple.__new__
    for move in moves:
        kind, words, span, *rest, told = move
        # The moves of one pass share what tells of it.
        if id(told) not in passes:
            passes[id(told)] = tuple([new(Pass, (n, of, there[repeat])) for n, of, repeat in told])
        out.append(new(Move, (kind, words, there[span], *rest, passes[id(told)])))
    return tuple(out)


def as_one_move(tally: Tally, words: str, span: Span) -> Move:
    """One move that stands for a row."""
    takes, makes, spaces = tally.walk.takes, tally.makes, tally.spaces
    return Move(MoveKind.WORK, words, span, takes, makes, spaces, "st", max(1, makes))


def _copied(entry: Entry) -> Copied | None:
    """Of which row of the same words the instructions are; None where they were changed since."""
    copied = entry.copied
    return copied if copied is not None and copied.nodes is entry.nodes else None


class _Farther(dict[Span, Span]):
    """Spans, and each so many characters and lines farther on."""

    def __init__(self, by: int, lines: int) -> None:
        super().__init__()
        self.by, self.lines = by, lines

    def __missing__(self, span: Span) -> Span:
        there = Span(span.start + self.by, span.end + self.by, span.line + self.lines)
        self[span] = there
        return there
