"""Rows of two together, over and over, "k2tog until there are 4 sts left" -> so many rows as halve
the stitches until the goal is reached.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from reader.pattern.layout import WrittenRow
from reader.pattern.rule import Rule

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

WITHIN = "two together until so many stitches are left, as the words say"


def halve(ledger: Ledger, row: WrittenRow, rule: Rule) -> None:
    """Books the rows of the rule; the last ends where the goal is reached, though amid a row."""
    goal, start, end = rule.goal or 1, row.start + rule.start, row.start + rule.end
    ledger.go_on(None)
    count = ledger.below.stitches or 0
    while count > 2 * goal and not ledger.full():
        count = (count + 1) // 2
        ledger.even(count, row.mark, start, end, WITHIN)
    if not ledger.full():
        ledger.even(goal, row.mark, start, end, WITHIN)
