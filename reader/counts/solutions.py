"""Rows solved already: the same words over the same row below are worked once, as they stand in
parts alike and in rounds that neither grow nor shrink.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from reader.counts.entries import Entry
from reader.counts.fabric import Below
from reader.counts.solve import best
from reader.counts.solved import Solved
from reader.counts.worked import Move, Pass
from reader.pattern.tree import Node
from reader.text.span import Span

MOST = 250
"""Rows kept; when there are more, those that were solved first are forgotten."""


class Solutions:
    """What was found for each row, with where the row stood."""

    def __init__(self) -> None:
        self.kept: dict[tuple[object, ...], tuple[tuple[Node, ...], int, int, Solved]] = {}

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
        """The best reading of the row, as in solve.best, with its moves where the row stands."""
        nodes, by, lines = entry.nodes, 0, 0
        if entry.copied is not None and entry.copied.nodes is nodes:
            nodes, by, lines = entry.copied.first, entry.copied.by, entry.copied.lines
        # The instructions are told by their identity: they are kept, so that it stays theirs.
        key = (id(nodes), below, tuple(chains), size, carried, total, room)
        kept = self.kept.get(key)
        if kept is None:
            one = best(entry.nodes, below, chains, size, carried, *total, room)
            one.tally.kept.worked.clear()
            if len(self.kept) >= MOST:
                del self.kept[next(iter(self.kept))]
            self.kept[key] = nodes, by, lines, one
            return one
        _, there, line, one = kept
        return one if there == by else _moved(one, by - there, lines - line)


def _moved(solved: Solved, by: int, lines: int) -> Solved:
    """The row as worked, told of words that stand so many characters and lines farther on."""
    spans: dict[Span, Span] = {}
    passes: dict[int, tuple[Pass, ...]] = {}

    def there(span: Span) -> Span:
        if span not in spans:
            spans[span] = Span(span.start + by, span.end + by, span.line + lines)
        return spans[span]

    moves = []
    for move in solved.tally.moves:
        told = move[-1]
        # The moves of one pass share what tells of it.
        if id(told) not in passes:
            passes[id(told)] = tuple([Pass(n, of, there(repeat)) for n, of, repeat in told])
        kind, words, span, *rest, _ = move
        moves.append(tuple.__new__(Move, (kind, words, there(span), *rest, passes[id(told)])))
    return replace(solved, tally=solved.tally.telling(moves))
