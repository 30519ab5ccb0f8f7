"""Copies of a piece that come on to one needle: "join the two pieces", "knit another piece to
correspond; slip the stitches of both on 3 needles" -> the stitches of all of them.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from reader.counts.entries import HAS_STITCHES
from reader.counts.fabric import plain
from reader.pattern.layout import WrittenRow

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

_PIECES = r"(?:pieces|panels|halves|legs|sections|parts|sides|fronts|backs|strips|flaps)"
JOINED = re.compile(
    r"\b(?:join|joining|put|place|slip|take)\b[^.;]{0,24}?\b(?:the|both|these)\s+(?:two\s+|2\s+)?"
    rf"(?:\w+\s+){{0,2}}?{_PIECES}\b",
    re.IGNORECASE,
)
ANOTHER = re.compile(
    r"\b(?:knit|make|work)\s+(?:another|an?\s+second|the\s+second|a\s+similar|1\s+more)"
    r"(?:\s+(?:piece|half|side|leg|panel|strip|section|flap|one))?"
    r"(?:\s+(?:to\s+(?:correspond|match)|(?:just\s+|exactly\s+)?(?:like|the\s+same|alike|as)"
    r"|in\s+the\s+same\s+(?:way|manner))\b[^.;]*)?\s*[.;]",
    re.IGNORECASE,
)
"""A second piece like the one on hand, with no rows of its own."""
WHY = "the stitches of both pieces, as the words say"


def join_copies(ledger: Ledger, words: str) -> bool:
    """ "Join the two pieces to knit in the round", where the part before was made twice: goes on
    with the stitches of both, and whether it did.
    """
    one = ledger.before.stitches
    if ledger.copies < 2 or one is None or not JOINED.search(words):
        return False
    ledger.go_on(None)
    if ledger.below.stitches != one:
        return False
    ledger.below, ledger.copies = plain(one * ledger.copies), 1
    return True


def only_joins(ledger: Ledger, row: WrittenRow, words: str) -> bool:
    """Takes what a row's words tell of copies; whether they tell of nothing else, so that the row
    is booked.
    """
    again = ANOTHER.search(words)
    here = ledger.below.stitches
    if again is not None and here and ledger.rows:
        ledger.copies, ledger.before = 2, ledger.below
    joined = join_copies(ledger, words)
    if not joined or again is None or HAS_STITCHES.search(words):
        return False
    ledger.even(ledger.below.stitches, None, row.start, row.end, WHY)
    return True
