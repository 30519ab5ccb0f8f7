"""Rows of which some are told by their numbers to gain or lose stitches, as rows in a ledger."""

from __future__ import annotations

from typing import TYPE_CHECKING

from reader.pattern.at_rows import at_rows
from reader.pattern.layout import WrittenRow
from reader.pattern.line_words import ACTION
from reader.pattern.rule_words import ROW_NAMED

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

MOST = 400
"""Rows that one sentence may tell of."""


def changed_at_rows(ledger: Ledger, row: WrittenRow) -> bool:
    """Books the rows that the words tell of; False, and nothing booked, where they tell of none, or
    where the numbers do not go on from the last row.
    """
    words = ledger.in_figures(row.start, row.end)
    told = at_rows(words) if row.mark is None and ROW_NAMED.search(words) else None
    if told is None or words[: told.start].strip(" ,.;"):
        return False
    if ACTION.search(ledger.printed(words[told.end :])[1]):
        return False
    # "Knit 10 rows" counts them from here, "to the 183rd row" as they were counted before.
    from_here = told.many is not None or told.named[0] <= ledger.number
    first = 1 if from_here else ledger.number + 1
    last = told.many or told.upto or told.named[-1]
    in_order = list(told.named) == sorted(set(told.named))
    ledger.go_on(None)
    if not in_order or last < told.named[-1] or last - first > MOST:
        return False
    for number in range(first, last + 1):
        here = ledger.below.stitches
        if here is None or ledger.full():
            return False
        gain = told.step if number in told.named else 0
        ledger.even(here + gain, None, row.start, row.end, "")
    ledger.check_total(row, 0, row.end - row.start)
    return True
