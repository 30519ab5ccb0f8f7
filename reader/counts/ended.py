"""Rows repeated to a goal, and then to the end of the rows: "until 20 sts, ending with R2"."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from reader.counts.entries import Entry
from reader.pattern.layout import WrittenRow

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

ENDS_WITH = re.compile(
    r"\bend(?:ing|s)? (?:with|on|after) (?:an? |the )?"
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
