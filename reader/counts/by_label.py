"""A row just booked by rule, called by the number that its own label has."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from reader.pattern.labels import Mark

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger


def called_by_label(ledger: Ledger, mark: Mark, number: int | None) -> None:
    """Gives the row booked last the label's number, where it has one; rows go on from there."""
    if number is None or ledger.rows[-1].number == number:
        return
    label = ledger.name(mark, number)
    ledger.rows[-1] = replace(ledger.rows[-1], number=number, label=label)
    ledger.number = number
