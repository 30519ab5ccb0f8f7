"""Work that goes on "on the remaining stitches only", where the words before have laid others on
needles of their own and nothing tells how many are left.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from reader.pattern.tree import Act, Deed

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

REST_ONLY = re.compile(
    r"\W*(?:(?:now|then|and|next)\s+)*"
    r"(?:(?:work|knit|continue|cont|proceed|keep|go on)(?:ing)?\s+)?"
    r"(?:back and forth\s+)?(?:only\s+)?(?:on|over|across|with)\s+(?:only\s+)?(?:the\s+)?"
    r"(?:remaining|rem|other|rest of the|heel)\s+(?:heel\s+)?(?:sts|stitches)\b",
    re.IGNORECASE,
)
"""How a sentence begins that works on those that are left."""
SO_MANY = re.compile(r"\b(\d{1,4})\s+(?:sts?|stitches)\b", re.IGNORECASE)


def rest_of_moved(ledger: Ledger, words: str) -> int | None:
    """How many stitches are left, where words that begin so follow a row that laid some aside on
    needles; None elsewhere.
    """
    entry = ledger.entries[-1] if ledger.entries else None
    row = ledger.rows[-1] if ledger.rows else None
    if entry is None or row is None or not row.count or REST_ONLY.match(words) is None:
        return None
    if row.count != row.before:
        return None
    laid = [
        SO_MANY.search(one.words)
        for one in entry.nodes
        if isinstance(one, Act) and one.deed is Deed.MOVED
    ]
    moved = sum(int(found[1]) for found in laid if found)
    return row.count - moved if laid and all(laid) and 0 < moved < row.count else None
