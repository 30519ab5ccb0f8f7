"""Words that tell how many stitches remain where they deal with them all: "cast off the remaining
38 sts" -> 38, to be held against the count.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from reader.pattern.figures import tightened

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

REMAINING = re.compile(
    r"^\W*(?:(?:then|and|now|next|loosely|row|rnd|round|break (?:off )?(?:yarn|wool)|cut yarn)\b"
    r"[ ,.:]*(?:and )?)*"
    r"(?:(?:bind|cast)(?:ing)? off|bo|place|leave|slip|sl|put|graft|draw\b[^.;]{0,40}?\bthrough"
    r"|thread\b[^.;]{0,40}?\bthrough|run\b[^.;]{0,40}?\bthrough)\s+(?:all\s+)?(?:the\s+|these\s+)?"
    r"(?:(?:remaining|rem)\s+(?P<a>\d+)|(?P<b>\d+)\s+(?:remaining|rem))\s+"
    r"(?:(?!sts|stitches)\w+\s+)?(?:sts?|stitches)\b",
    re.IGNORECASE,
)


EVEN_ON = re.compile(
    r"^\W*(?:(?:then|and|now|next)\b[ ,]*)*(?:(?:work|cont(?:inue)?|knit|rib|go on)\w*\s+)?"
    r"(?:\d+\s+(?:more\s+)?(?:rows|rnds|rounds)\s+)?(?:even|straight|plain|without shaping)\s+"
    r"(?:in\s+\w+\s+)?(?:on|across|over|with)\s+(?:(?:the|these|all|remaining|rem)\s+)*"
    r"(?P<n>\d+)\s+(?:sts?|stitches)\b",
    re.IGNORECASE,
)
"""Rows that are worked even on so many stitches: as many as there are."""


EACH_SIDE = re.compile(r"\b(?:of|on|at|for) each (?:side|half|front)\b", re.IGNORECASE)
"""Both sides of a neck are worked at once: so many are told of one of them."""


def remaining_told(words: str, size: int, sizes: int) -> int | None:
    """The number of stitches that the words say remain; None where they say none."""
    told = tightened(words, size, sizes)
    found = REMAINING.match(told)
    even = EVEN_ON.match(told)
    if even:
        return int(even["n"][:5])
    return int((found["a"] or found["b"])[:5]) if found else None


def hold_against(ledger: Ledger, start: int, end: int) -> None:
    """Asks where the rows do not come to the stitches that remain; takes them where the count is
    not known or in doubt.
    """
    told = remaining_told(ledger.text[start:end], ledger.size, len(ledger.pattern.sizes))
    here = ledger.below.stitches
    if told is None or not ledger.rows or here == told:
        return
    if here == 2 * told and EACH_SIDE.search(ledger.text, start, end):
        return
    ledger.settle(told)
