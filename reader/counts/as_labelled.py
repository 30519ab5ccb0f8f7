"""Rows called back so often behind a label of several rows: where the two tell different numbers of
rows, the label's are worked, since the next label goes on from them, and it is asked about.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from reader.counts.entries import numbers_of
from reader.counts.questions import ask_of_label
from reader.counts.rows_called import called_back
from reader.pattern.layout import WrittenRow
from reader.pattern.rule import Rule

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger


def first_of_many(row: WrittenRow, rule: Rule) -> bool:
    """Whether a label of one row stands before a rule that goes on to a goal."""
    return rule.goal is not None and len(numbers_of(row.mark)) < 2


def other_than_label(ledger: Ledger, row: WrittenRow, rule: Rule) -> bool:
    """Whether the label stands for another number of rows than the words; then that is asked."""
    many, start = len(numbers_of(row.mark)), row.start + rule.start
    if many < 2 or not rule.times or ledger.text[row.start + rule.end : row.end].strip(" .\n"):
        return False
    _, entries = called_back(ledger, rule)
    told = rule.times * len(entries)
    if not entries or many in (told, told - len(entries)):
        return False
    ask_of_label(ledger, row, many, told, start)
    return True
