"""A star that stands before rows and not inside one: "* Knit 6 rows. Next row: ... Repeat from *
twice more." -> where it stands, and the rows that are worked again.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from reader.pattern.goals import goal_in, times_in
from reader.pattern.layout import WrittenRow

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

BEFORE = re.compile(r"^[^\w*]*\*+(?!\s*to\b)")
"""A star that the row begins with."""
BEHIND = re.compile(r"[.;:]\s*\*+\s*$")
"""A star behind what starts the work: "Cast on 60 sts. *"."""
AMID = re.compile(
    r"^\W*(?:with\b[^.;*]{0,40})?(?:cast on|co) \d[^.;*]*[.;]\s*\*+\s*(?=(?:knit|work|purl|k \d"
    r"|inc|dec)\b)",
    re.IGNORECASE,
)
"""A star between what starts the work and its first row."""
BACK = re.compile(
    r"(?:^|(?<=[.;)*])\s+)\W{0,3}(?:now |then |and )*rep(?:eat)?\s+from\s+(?:the\s+)?"
    r"(?:first\s+)?\*+(?:\s*to\s*\*+)?"
    r"(?P<how>[^.;*]*)[.;]?\s*$",
    re.IGNORECASE,
)
"""The sentence that goes back to it, at the row's end."""


def note_star(ledger: Ledger, words: str) -> None:
    """Keeps in mind where a star stands before rows."""
    if BEFORE.match(words) or BEHIND.search(words) or AMID.search(words):
        ledger.star = len(ledger.entries)


def goes_back(ledger: Ledger, row: WrittenRow) -> WrittenRow | None:
    """The row's sentence that goes back to a star before earlier rows; None where it has none."""
    words = ledger.text[row.start : row.end]
    found = BACK.search(words)
    here = found is None or "*" in words[: found.start()].rstrip("* \n")
    if found is None or here or not 0 <= ledger.star < len(ledger.entries) + bool(found.start()):
        return None
    return WrittenRow(None, row.start + found.start(), row.end)


def again(ledger: Ledger, row: WrittenRow) -> None:
    """Works the rows behind the star again, as often as its sentence says; one row stands for them
    where only a measure says how often.
    """
    words = " ".join(ledger.text[row.start : row.end].split())
    entries, times, goal = ledger.entries[ledger.star :], times_in(words), goal_in(words)
    if times is None and goal is None:
        why = "as many rows as the words ask for"
        ledger.even(ledger.below.stitches, None, row.start, row.end, why, True)
        return
    for _ in range(times if times is not None else 200):
        here = ledger.below.stitches
        if times is None and (here is None or here == goal or here <= 0):
            return
        for entry in entries:
            if ledger.full():
                return
            ledger.again(entry, ledger.number + 1 if ledger.number else None, row)
