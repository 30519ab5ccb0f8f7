"""Rows by rule whose count stays: "knit 4 rows", "work even in pattern", "work even on 24 sts"."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from reader.counts.entries import numbers_of
from reader.counts.fabric import plain
from reader.counts.growth import LONGEST
from reader.counts.pattern_again import first_row_again
from reader.counts.questions import ask_of_chart, ask_of_number, ask_of_total, ask_of_which_row
from reader.pattern.layout import WrittenRow
from reader.pattern.rule import Rule
from reader.terms.stitches import Craft

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

IN_ROW = re.compile(
    r"\b(?:in|on|across) (?:the )?(\d{1,3})(?:st|nd|rd|th) (?:rows?|rnds?|rounds?)\b", re.IGNORECASE
)
"""In which of the rows the count changes."""
ALL_OF_THEM = re.compile(r"\b(?:the|these|those|all|remaining|rem)\b", re.IGNORECASE)


def evenly(ledger: Ledger, row: WrittenRow, rule: Rule) -> None:
    """ "Knit 4 rows", "work 6 rounds even": the count stays, or changes in one of them."""
    start, end = row.start + rule.start, row.start + rule.end
    why = "as many rows as the measure takes" if rule.measured else ""
    if rule.charted:
        why = "a chart is not read; the stitch count is taken to stay"
        ask_of_chart(ledger, row, start, end)
    rows = len(numbers_of(row.mark)) if rule.kind == "fabric" else rule.rows
    if rule.until_row is not None:
        rows = max(0, rows - (ledger.number or 0))
    if rule.unclear:
        ask_of_which_row(ledger, row, start, end)
    if rows > LONGEST:
        rows = LONGEST
        ask_of_number(ledger, start, end, rows)
    if rule.kind == "fabric" and rule.goal is not None:
        goes_on_with(ledger, rule.goal, start, end)
    if rows and first_row_again(ledger, WrittenRow(row.mark, start, end)):
        rows -= 1
    named = IN_ROW.search(rule.rest) if rule.step else None
    changed = 0 if rule.at_once else rows - 1
    changed = min(int(named[1]), rows) - 1 if named else changed
    for at in range(rows):
        count = ledger.below.stitches
        if count is not None and at == changed:
            count += rule.step
        if not ledger.full():
            count = -1 if rule.unclear else count
            ledger.even(count, row.mark, start, end, why, rule.measured)


def up_to_label(ledger: Ledger, row: WrittenRow, here: int) -> None:
    """The rest of a label's rows, where the words tell of fewer and change nothing: "Rows 5-8: st
    st, two rows blue, two rows white". here: how many rows there were before it.
    """
    told = ledger.rows[here:]
    numbers = row.mark.numbers if row.mark is not None else ()
    if len(numbers) < 2 or not 0 < len(told) < len(numbers):
        return
    if any(one.count is None or one.count != one.before for one in told):
        return
    for _ in range(len(numbers) - len(told)):
        if not ledger.full():
            ledger.even(ledger.below.stitches, row.mark, row.start, row.end, "")


ENDS_IN_TOTAL = re.compile(r"(?:[:=]\s*\d{1,4}|[(\[]\d{1,4}[)\]])(?:\s*(?:sts?|stitches))?[\s.]*$")
CHANGES = re.compile(
    r"\b(?:inc|dec|increas|decreas|narrow|widen|los|gain|tak|k2tog|m1|make|rais|reduc)\w*",
    re.IGNORECASE,
)


def total_within(ledger: Ledger, row: WrittenRow, rule: Rule) -> None:
    """Holds the total that the words of so many rows end with against them, where they tell of a
    change besides: "rib 10 rows, in the last inc 2: 42".
    """
    words = ledger.in_figures(row.start + rule.start, row.start + rule.end)
    knits = ledger.pattern.craft is Craft.KNITTING
    if knits and not rule.step and CHANGES.search(words) and ENDS_IN_TOTAL.search(words):
        ledger.check_total(row, rule.start, rule.end)


def goes_on_with(ledger: Ledger, stitches: int, start: int, end: int) -> None:
    """Takes what "work even on 24 stitches" says is on hand; asked about where it is not."""
    here = ledger.below.stitches
    if stitches in (here, ledger.below.spaces):
        return
    # "Work even on 6 sts" of eight, crocheted: the others are left unworked.
    left = ledger.pattern.craft is Craft.CROCHET and stitches < (here or 0)
    left = left and not ALL_OF_THEM.search(ledger.text[start:end])
    if here is not None and not left and not ledger.doubted and ledger.rows:
        ask_of_total(ledger, stitches, start, end)
    ledger.below, ledger.doubted = plain(stitches), True
