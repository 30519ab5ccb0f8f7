"""Rows repeated to a goal, and then to the end of the rows: "until 20 sts, ending with R2"."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import TYPE_CHECKING

from reader.counts.entries import Entry
from reader.pattern.layout import WrittenRow
from reader.terms.stitches import Craft

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

ENDS_WITH = re.compile(
    r"\b(?:end|finish|stop)(?:ping|ing|e?s)?(?: off)?(?: (?:the )?last rep\w*)?"
    r" (?:with|on|after|at) (?:an? |the )?"
    r"(?:(?:R|rows?|rnds?|rounds?) ?(?P<n>\d+)|(?P<nth>\d+)(?:st|nd|rd|th|d) (?:row|rnd|round)"
    r"|ws\b|wrong|purl|p\b|plain|even\b)",
    re.IGNORECASE,
)
"""A repeat that is worked to the end of its rows: "until there are 20 sts, end with R2"."""


def to_their_end(ledger: Ledger, entries: list[Entry], span: WrittenRow) -> bool:
    """Whether the words say that the last of the rows repeated is worked when the goal is reached.
    """
    said = ENDS_WITH.search(ledger.text, span.start, span.end)
    if said is None or len(entries) < 2 or entries[-1].gain != 0:
        return False
    number = said["n"] or said["nth"]
    return number is None or int(number[:4]) == entries[-1].number


def is_pair(ledger: Ledger, entries: Sequence[Entry], span: WrittenRow) -> bool:
    """Whether knitted rows are one that changes the count and plain ones behind it, told as rows:
    "repeat these 2 rows until 20 sts remain" works the last pair to its end.
    """
    told = ledger.pattern.source.text[span.start : span.end]
    if ledger.pattern.craft is not Craft.KNITTING or not ROWS.search(told):
        return False
    return sum(bool(one.gain) for one in entries) == 1 and not entries[-1].gain


ROWS = re.compile(r"\b(?:rows?|rnds?|rounds?|rds?)\b", re.IGNORECASE)


LEFT_OUT = re.compile(
    r"\b(?:omit|leav|skip)\w*(?: out)? (?:R|rows?|rnds?|rounds?) ?(?P<n>\d+)"
    r"(?: (?:on|in|at|of|for))?(?: the)? last\b",
    re.IGNORECASE,
)
""" "Omitting row 12 on the last repeat"."""


def last_of_all(ledger: Ledger, entries: Sequence[Entry], row: WrittenRow) -> int:
    """With how many of the rows the last of several repeats ends, by the words of its sentence: all
    of them where it tells nothing else.
    """
    stop = ledger.text.find(".", row.end)
    end = stop if 0 <= stop < row.end + NEAR else row.end
    said, out = (one.search(ledger.text, row.start, end) for one in (ENDS_WITH, LEFT_OUT))
    numbers = [one.number for one in entries]
    if out is not None and int(out["n"]) == numbers[-1]:
        return len(entries) - 1
    number = int((said["n"] or said["nth"] or "0")[:4]) if said is not None else 0
    return numbers.index(number) + 1 if number in numbers[:-1] else len(entries)


NEAR = 60
"""Characters behind a rule in which the rest of its sentence may stand."""


def ends_at(
    ledger: Ledger, entries: Sequence[Entry], row: WrittenRow, span: WrittenRow
) -> int:
    """How many stitches more than at the start the row has with which rows repeated to a measure
    end, "repeat rows 1-12 for 20 inches, ending with row 11"; 0 where they end with none of them.
    """
    stop = ledger.text.find(".", span.end, row.end)
    said = ENDS_WITH.search(ledger.text, span.start, stop if stop >= 0 else row.end)
    number = int((said["n"] or said["nth"] or "0")[:4]) if said is not None else 0
    at = next((n for n, one in enumerate(entries) if number and one.number == number), None)
    if at is None or any(one.gain is None for one in entries[: at + 1]):
        return 0
    return sum(one.gain or 0 for one in entries[: at + 1])
