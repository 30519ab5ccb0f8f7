"""Rows that undo the shaping before them, "decrease same as you increased" -> its counts, from the
last to the first.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from reader.counts.questions import ask_how_often
from reader.pattern.layout import WrittenRow
from reader.pattern.rule import Rule

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

WHY = "as the rows before it, turned about"


def mirror(ledger: Ledger, row: WrittenRow, rule: Rule) -> None:
    """Books the rows; where no rows before gained or lost so, how many stitches are left is asked.
    """
    start, end = row.start + rule.start, row.start + rule.end
    known = [*(one.before for one in ledger.rows[:1]), *(one.count for one in ledger.rows)]
    known = known[1:] if known[:1] == [None] else known
    counts = [one for one in known if one is not None] if None not in known[-200:] else []
    back = undone([one * -rule.sign for one in counts])
    if not back:
        ledger.even(-1, row.mark, start, end, "how many rows these are is not known", True)
        ask_how_often(ledger, row, start, end)
    for count in back:
        if not ledger.full():
            ledger.even(abs(count), row.mark, start, end, WHY)


def undone(counts: list[int]) -> list[int]:
    """The counts behind the last that rose to it, without the even rows before and after the rise,
    from the last to the first; [] where none rose.
    """
    here = len(counts) - 1
    while here > 0 and counts[here - 1] == counts[here]:
        here -= 1
    peak = here
    while here > 0 and counts[here - 1] <= counts[here]:
        here -= 1
    while here < peak and counts[here] == counts[here + 1]:
        here += 1
    return counts[here:peak][::-1]
