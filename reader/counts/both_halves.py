"""A second half worked like the first, and both taken on one needle again: "work the other front to
correspond, slip all the stitches on one needle".
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace
from typing import TYPE_CHECKING

from reader.pattern.layout import WrittenRow

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

BOTH = re.compile(
    r"\W*(?:(?:then|now|and|next)\s+)*(?:work|knit|make|finish|complete)\s+(?:the\s+)?"
    r"(?:other|second|opposite)\s+(?:front|half|side|back|shoulder)\s+"
    r"(?:to\s+(?:correspond|match)|in\s+the\s+same\s+(?:way|manner)|the\s+same|alike|like)\b[^.;]{0,40}?"
    r"[,;.]\s+(?:(?:then|now|and|next)\s+)*(?:slip|put|place|take|join|bring)\s+(?:all|both)\b"
    r"[^.;,]{0,40}?\bon(?:to|\s+to)?\s+(?:one|the\s+same|a\s+single)\s+(?:needle|pin)\b[.;,]?",
    re.IGNORECASE,
)


def both_halves(ledger: Ledger, row: WrittenRow, work: Callable[[WrittenRow], None]) -> bool:
    """Goes on with twice the stitches of the half just worked, where the others waited, and works
    what stands behind; False, and nothing worked, for other words.
    """
    words = ledger.text[row.start : row.end]
    found = BOTH.match(words)
    here = ledger.below.stitches
    if found is None or not here or not ledger.waiting:
        return False
    end = row.start + found.end()
    why = "both halves are on one needle again, each with as many stitches"
    ledger.even(2 * here, row.mark, row.start, end, why)
    ledger.waiting = ()
    if re.search(r"\w", ledger.text[end : row.end]):
        work(replace(row, mark=None, start=end))
    return True
