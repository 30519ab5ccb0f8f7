"""A written row -> its instructions and printed totals, read with the words as they stand there."""

from __future__ import annotations

from collections.abc import Sequence

from reader.counts.casting import LAID_OUT, cast_on_in
from reader.counts.differing import as_before
from reader.counts.entries import Entry, without_sayings
from reader.counts.joined_pieces import over_pieces
from reader.counts.sentences import without_heading
from reader.counts.two_in_each import two_in_each
from reader.pattern.chained_between import chained_between
from reader.pattern.chains_too import chains_too
from reader.pattern.closing_stitch import closed_by_stitch
from reader.pattern.clusters import begun_with_chain
from reader.pattern.edge_corners import as_many_as_sides
from reader.pattern.ends_by_size import of_one_size
from reader.pattern.from_beginning import chain_begins_once
from reader.pattern.layout import WrittenRow
from reader.pattern.parser import Pattern
from reader.pattern.read_once import nodes_of, totals_of
from reader.pattern.tree import Act, Chain, Deed, Node, Start
from reader.terms.stitches import Craft


def read_written(
    pattern: Pattern, row: WrittenRow, last: Sequence[Entry], size: int = 0
) -> Entry:
    """The instructions and totals of a written row in a size; last: the row before, or none."""
    knits = pattern.craft is Craft.KNITTING
    written = pattern.reading[row.start : row.end]
    if knits and row.mark is None:
        written = without_heading(written)
    printed, blank = totals_of(written, pattern.book)
    blank = of_one_size(without_sayings(blank), size, len(pattern.sizes)) if knits else blank
    begun = cast_on_in(blank) if knits and row.mark is None else None
    if begun is not None:
        laid = LAID_OUT.search(blank, begun.start, begun.end)
        end = laid.start() if laid else begun.end
        blank = (" " * begun.start + blank[begun.start : end]).ljust(len(blank))
    finished = _as_read if knits else _begun_and_ended
    before = last[0].nodes if last else ()
    copied = nodes_of(blank, row.start, row.end, pattern.book, finished)
    return Entry(None, as_before(copied.nodes, blank, before), row, printed, copied=copied)


def _as_read(nodes: tuple[Node, ...]) -> tuple[Node, ...]:
    return nodes


def _begun_and_ended(nodes: tuple[Node, ...]) -> tuple[Node, ...]:
    """A crocheted row with its chain worked once, and nothing behind its end."""
    begun = chain_begins_once(begun_with_chain(chains_too(tuple(two_in_each(nodes)))))
    return as_many_as_sides(closed_by_stitch(chained_between(over_pieces(off_the_hook(begun)))))


def off_the_hook(nodes: tuple[Node, ...]) -> tuple[Node, ...]:
    """The row without what is only told behind its end: once the yarn is cut, nothing is worked
    until it is joined again, a chain is made or other yarn is worked with.
    """
    ends = [at for at, one in enumerate(nodes) if isinstance(one, Act) and one.deed is Deed.FINISH]
    works = [at for at, one in enumerate(nodes) if not isinstance(one, Act)]
    if not ends or not works or works[0] > ends[-1] or works[-1] < ends[-1]:
        return nodes
    behind = nodes[ends[-1] + 1 :]
    for one, other in zip(behind, [*behind[1:], None], strict=True):
        yarn = isinstance(one, Act) and one.deed is Deed.COLOUR and not isinstance(other, Act)
        joined = isinstance(one, Act) and one.deed is Deed.JOIN
        if isinstance(one, Chain | Start) or joined or (yarn and other is not None):
            return nodes
    told = tuple(
        one if isinstance(one, Act) else Act(one.span, one.words, Deed.NOTE) for one in behind
    )
    return (*nodes[: ends[-1] + 1], *told)
