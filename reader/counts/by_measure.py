"""Rows that go on to a measure, booked as one."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from reader.counts.ended import ends_at
from reader.counts.entries import Entry
from reader.counts.last_row import changed_inside
from reader.counts.questions import ask_how_often
from reader.pattern.layout import WrittenRow
from reader.terms.stitches import Craft

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger


def by_measure(
    ledger: Ledger, row: WrittenRow, span: WrittenRow, entries: Sequence[Entry], gained: int
) -> None:
    """How many rows that is only the measure tells; the words stand as one row, never dropped."""
    why = "as many rows as the measure takes"
    changes = gained != 0 and ledger.pattern.craft is Craft.KNITTING
    here = ledger.below.stitches
    amid = 0 if changes or here is None else ends_at(ledger, entries, row, span)
    here = None if here is None else here + amid
    ledger.even(-1 if changes else here, None, span.start, span.end, why, True)
    changed_inside(ledger, span.start, span.end)
    if changes:
        ask_how_often(ledger, row, span.start, span.end)
