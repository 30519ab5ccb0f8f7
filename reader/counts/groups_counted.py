"""The groups of a row, where they, and not stitches, are what is counted."""

from __future__ import annotations

from typing import TYPE_CHECKING

from reader.counts.agreeing import in_groups
from reader.counts.entries import Entry
from reader.counts.solved import Solved

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger


def row_groups(
    solved: Solved, kind: str, stated: int | None, entry: Entry, ledger: Ledger
) -> tuple[int | None, str]:
    """How many groups a row has, and their name; (None, "") where stitches are counted, also beside
    the groups. ledger: knows the groups of the row below, and those of earlier totals.
    """
    if any(one.mixed for one in entry.printed):
        return None, ""
    before = ledger.rows[-1].groups if ledger.rows else None
    return in_groups(solved, kind, stated, entry.unit, tuple(ledger.units), before)
