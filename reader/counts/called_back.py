"""Rows called back in a manner of their own: each time with a loop less, or odd and even rows as
two others.
"""

from __future__ import annotations

from dataclasses import replace

from reader.counts.entries import Entry, inner_times, once_fewer
from reader.counts.ledger import Ledger
from reader.pattern.layout import WrittenRow
from reader.pattern.rule import Rule


def pineapple(ledger: Ledger, entry: Entry, span: WrittenRow, goal: int) -> None:
    """A row again and again, each time with one loop less in each group, until `goal` remain."""
    while inner_times(entry.nodes) > goal and not ledger.full():
        entry = replace(entry, nodes=once_fewer(entry.nodes))
        ledger.again(entry, ledger.number + 1 if ledger.number else None, span)


def turns(ledger: Ledger, row: WrittenRow, rule: Rule) -> None:
    """Odd rows as one row, even rows as another, up to a row's number."""
    span = WrittenRow(None, row.start + rule.start, row.start + rule.end)
    while ledger.number and ledger.number < (rule.until_row or 0) and not ledger.full():
        number = ledger.number + 1
        entry = ledger.entry_of(rule.first if number % 2 else rule.last)
        if entry is None:
            return
        ledger.again(entry, number, span)
    ledger.check_total(row, rule.start, rule.end)
