"""Work that goes on "on the remaining stitches only", or "on these", where the words before have
laid others on needles of their own, or bound some off amid the row.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from reader.pattern.tree import Act, Deed, Edge, Where, Work

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


ON_THESE = re.compile(
    r"\W*(?:(?:now|then|and|next)\s+)*(?:on|over|with)\s+(?:these|those|this)\b(?:\s+last)?"
    r"(?:\s+(?P<n>\d+))?(?:\s+(?:sts|stitches))?(?:\s+only)?",
    re.IGNORECASE,
)
"""How a sentence begins that works on those that were knitted last."""
GOES_ON = re.compile(
    r",?\s+(?:continue|cont|go on|proceed|work|knit)\s+(?:on\s+)?(?:with|for)\s+(?:the\s+)?"
    r"(?:\w+\s+)?(?:front|back|side|shoulder|half|strap|sleeve)\W*$",
    re.IGNORECASE,
)
"""What piece is worked next, and not how."""


ON_SO_MANY = re.compile(
    r"\W*(?:(?:now|then|and|next)\s+)*(?:on|over|with)\s+(?:the|these|those)\s+(?P<n>\d+)\s+"
    r"(?:(?:thumb|heel|instep|flap|front|back|finger|gusset|sleeve|centre|center)\s+)?(?:sts|stitches)"
    r"(?:\s+(?:only|alone))?\s*,?\s+(?=(?:work|knit|purl|cont\w*|rib|make|k|p)\b)",
    re.IGNORECASE,
)
"""How a sentence begins that tells how many are worked on, and then what is worked."""


def told_first(words: str) -> int | None:
    """How many stitches a sentence says first that it works on; None for another."""
    found = ON_SO_MANY.match(words)
    return int(found["n"][:5]) if found else None


def only_says_which(words: str) -> bool:
    """Whether a sentence says on which stitches what is worked next, and nothing of how."""
    found = ON_THESE.match(words) or REST_ONLY.match(words)
    return found is not None and GOES_ON.match(words, found.end()) is not None


def knitted_last(ledger: Ledger, words: str) -> int | None:
    """How many were knitted behind those that the row before bound off, where the words go on with
    these; None elsewhere.
    """
    found = ON_THESE.match(words)
    nodes = ledger.entries[-1].nodes if ledger.entries and ledger.rows else ()
    works = [one for one in nodes if isinstance(one, Work | Edge)]
    if found is None or len(works) < 3 or not isinstance(works[-2], Edge) or works[-2].cast_on:
        return None
    last = works[-1]
    if not isinstance(last, Work) or last.place.where is not Where.PLAIN or last.number is None:
        return None
    number = last.number.at(ledger.size)
    return number if found["n"] in (None, str(number)) else None


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
