"""Which rows a rule calls back: "rep rows 2 and 3", "repeat the last 2 rows", "repeat row 3 to row
6".
"""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from reader.counts.entries import Entry
from reader.pattern.rule import Rule

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger


def called_back(ledger: Ledger, rule: Rule) -> tuple[Rule, list[Entry]]:
    """The rule as it is meant behind the rows worked up to here, and the rows; [] for none."""
    rule = _up_to(rule, ledger.number)
    return rule, rows_of(ledger, rule)


def _up_to(rule: Rule, number: int) -> Rule:
    """ "Repeat row 3 to row 6" behind row 3: that row until there are six."""
    told = rule.times is not None or rule.goal is not None or rule.until_row is not None
    if rule.kind != "rows" or told or not rule.first == number < rule.last:
        return rule
    return replace(rule, last=number, until_row=rule.last)


BEGINNINGS = frozenset(["Cast on", "Foundation", "Start"])
"""Labels of what rows begin from."""


def rows_worked(ledger: Ledger) -> int:
    """How many rows of the part are worked: the number of the last, or where they have none, as
    many as there are.
    """
    return ledger.number or sum(one.label not in BEGINNINGS for one in ledger.rows)


def _block(ledger: Ledger) -> list[Entry]:
    """The rows told last, from that with number 1; two where they have no numbers."""
    first = [at for at, one in enumerate(ledger.entries) if one.number == 1]
    rows = ledger.entries[first[-1] :] if first else []
    numbers = [one.number for one in rows]
    return rows if numbers and numbers == list(range(1, len(rows) + 1)) else ledger.entries[-2:]


def rows_of(ledger: Ledger, rule: Rule) -> list[Entry]:
    """The rows that a repeat calls back."""
    if rule.kind == "last" and not rule.rows:
        return _block(ledger)
    if rule.kind == "last":
        return ledger.entries[-max(1, min(rule.rows, len(ledger.entries) or 1)) :]
    last = rule.last or ledger.number
    numbers = rule.named or range(rule.first, min(last, rule.first + 200) + 1)
    found = [ledger.entry_of(number) for number in numbers]
    return [one for one in found if one is not None]
