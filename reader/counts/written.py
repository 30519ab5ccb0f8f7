"""A written row -> its instructions and printed totals, read with the words as they stand there."""

from __future__ import annotations

from reader.counts.casting import cast_on_in
from reader.counts.differing import as_before
from reader.counts.entries import Entry, without_sayings
from reader.counts.joined_pieces import over_pieces
from reader.counts.sentences import without_heading
from reader.pattern.instructions import read_row
from reader.pattern.layout import WrittenRow
from reader.pattern.parser import Pattern
from reader.pattern.printed import printed_in
from reader.pattern.totals import Printed
from reader.pattern.tree import Act, Chain, Deed, Node, Start
from reader.terms.stitches import Craft


class Shifted:
    """Clean text seen from a row's start: spans of the row's tokens come out in the maker's text.
    """

    __slots__ = ("by", "source")

    def __init__(self, source: object, by: int) -> None:
        self.source, self.by = source, by

    def origin(self, at: int) -> int:
        """The original offset of an offset in the row."""
        return int(self.source.origin(at + self.by))  # type: ignore[attr-defined]


def read_written(pattern: Pattern, row: WrittenRow, last: tuple[Node, ...]) -> Entry:
    """The instructions and totals of a written row; last: the instructions of the row before."""
    knits = pattern.craft is Craft.KNITTING
    written = pattern.reading[row.start : row.end]
    if knits and row.mark is None:
        written = without_heading(written)
    printed, blank = totals_in(pattern, written)
    blank = without_sayings(blank) if knits else blank
    begun = cast_on_in(blank) if knits and row.mark is None else None
    if begun is not None:
        blank = (" " * begun.start + blank[begun.start : begun.end]).ljust(len(blank))
    source = Shifted(pattern.book.source, row.start) if pattern.book.source is not None else None
    book = pattern.book.as_of(row.end, source)  # type: ignore[arg-type]
    nodes = read_row(blank, 0, len(blank), book)
    nodes = nodes if knits else over_pieces(off_the_hook(nodes))
    return Entry(None, as_before(nodes, blank, last), row, tuple(printed))


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


def totals_in(pattern: Pattern, words: str) -> tuple[list[Printed], str]:
    """The totals printed in words, and the words without them."""
    return printed_in(words, len(pattern.sizes), pattern.book.filet)
