"""A piece told by one before it: "ch 22, work in pattern for 15 rows" -> its first row, as it is
written where the pattern stands.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import TYPE_CHECKING

from reader.counts.ends import ends_of, first_work
from reader.counts.entries import Entry
from reader.pattern.layout import WrittenRow
from reader.pattern.tree import Where

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger


def first_row_again(ledger: Ledger, row: WrittenRow, piece: Sequence[Entry] = ()) -> bool:
    """Works the first row of a piece, or of the one before, over a chain of which no row is made
    yet; False, and nothing worked, where there is no such row.
    """
    if not ledger.below.chained:
        return False
    books = [piece, ledger.entries, *list(ledger.earlier.values())[::-1]]
    first = next((one for book in books for one in book if _on_chain(one)), None)
    if first is None:
        return False
    chain = ends_of(first.nodes).foundation
    nodes = tuple(one for one in first.nodes if one is not chain)
    ledger.work(replace(first, nodes=nodes, row=row, printed=(), quoted=True), 1)
    return True


def _on_chain(entry: Entry) -> bool:
    """Whether a row is worked along a foundation chain."""
    work = first_work(entry.nodes)
    return entry.number == 1 and work is not None and work.place.where is Where.CHAIN
