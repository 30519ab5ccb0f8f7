"""The one stitch that binding off left on the needle, with which the stitches picked up along the
next edge are worked: a log cabin, a domino, a border; unless it was fastened off.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from reader.counts.entries import Entry
from reader.counts.fabric import Below, plain
from reader.pattern.tree import Act, Edge
from reader.terms.stitches import Craft

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

PICKS = re.compile(r"\W*(?:pick|tak|k(?:nit)? up)", re.IGNORECASE)
LEFT_ON = re.compile(
    r"\b(?:bind|cast|binding|casting|bo)\b(?:(?!\b(?:bind|cast) off)[^\n]){0,60}"
    r"\b(?:last|one|1|single)\b",
    re.IGNORECASE,
)
FASTENED = re.compile(
    r"\b(?:fasten|pull|draw)\w*\b[^.;\n]{0,30}\b(?:off|through|thro)\b", re.IGNORECASE
)
NEARBY = 200
"""Characters before a row in which the end of the piece before stands."""


def keep_last_loop(ledger: Ledger, entry: Entry) -> None:
    """Has a row that picks up stitches begin with the last of the piece before it, or without one
    that was fastened off.
    """
    works = [one for one in entry.nodes if not isinstance(one, Act)]
    if ledger.pattern.craft is not Craft.KNITTING or not works:
        return
    picks = isinstance(works[0], Edge) and works[0].cast_on and PICKS.match(works[0].words)
    on_hand = ledger.below if ledger.rows else ledger.before
    if not picks or on_hand.stitches != 1:
        return
    told = ledger.text[max(0, entry.row.start - NEARBY) : entry.row.start]
    if FASTENED.search(told):
        ledger.below, ledger.before = plain(0), Below()
    elif not ledger.rows and LEFT_ON.search(told):
        ledger.below = on_hand
