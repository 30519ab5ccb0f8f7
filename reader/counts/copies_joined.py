"""Copies of a piece that come on to one needle: "join the two pieces", "knit another piece to
correspond; slip the stitches of both on 3 needles" -> the stitches of all of them.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from reader.counts.entries import HAS_STITCHES, Entry
from reader.counts.fabric import Below, plain
from reader.counts.last_loop import keep_last_loop
from reader.pattern.layout import WrittenRow
from reader.pattern.tree import Act, Edge, Num, Where, Work

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
JOINING = re.compile(r"\b(?:join(?:ing)?|unit(?:e|ing)|together)\b", re.IGNORECASE)
NEARBY = 40
"""Characters before a row's words in which its label stands."""
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


JOINED_TO_FIRST = re.compile(
    r"\W*(?:work|make)\s+(?:an?|another|the|one)\s+(?:(?:2nd|second|other|more)\s+)?(?P<of>motif|flower"
    r"|square|medallion|wheel|rosette|block)\s+(?:in\s+(?:the\s+)?same\s+manner|like\s+(?:the\s+)?"
    r"(?:1st|first)|(?:the\s+)?same\s+as\s+(?:the\s+)?(?:1st|first))\b[^.;:*]{0,20}\bjoin",
    re.IGNORECASE,
)
"""A second motif, of which only the last round is told, for its joins."""


def joined_to_first(ledger: Ledger, row: WrittenRow) -> bool:
    """Books the last round of a second motif with as many stitches as that of the first, whatever
    it is joined to; False (nothing booked) for other rows.
    """
    text = ledger.text
    if row.mark is not None or not JOINED_TO_FIRST.match(text, row.start, row.end):
        return False
    if not ledger.rows or ledger.below.stitches is None:
        return False
    below = ledger.below
    ledger.even(below.stitches, None, row.start, row.end, AS_FIRST)
    ledger.below = below
    return True


AS_FIRST = "as many as in the last round of the first, whatever it is joined to"


def come_together(ledger: Ledger, entry: Entry) -> None:
    """A part whose first row works more stitches than the part before it left, each lot by its
    number, and prints as many or says that it joins: those of several pieces, not of that one.
    """
    keep_last_loop(ledger, entry)
    before = ledger.before.stitches
    works = [one for one in entry.nodes if not isinstance(one, Act)]
    if ledger.rows or ledger.below.stitches is not None or not before or len(works) < 2:
        return
    size, takes, makes = ledger.size, 0, 0
    for one in works:
        if isinstance(one, Edge) and one.cast_on and one.number is not None:
            makes += one.number.at(size)
        elif isinstance(one, Work) and (number := _so_many(one)) is not None:
            takes += number.at(size) * one.stitch.takes
            makes += number.at(size) * one.stitch.makes
        else:
            return
    start = max(0, entry.row.start - NEARBY)
    joins = JOINING.search(ledger.text[start : entry.row.end]) is not None
    if takes > before and (joins or ledger.stated(entry)[0] == makes):
        ledger.before = Below()


def _so_many(one: Work) -> Num | None:
    place = one.place
    told = place.number if place.where is Where.NEXT and place.noun == "st" else one.number
    return told if place.where in (Where.PLAIN, Where.NEXT) else None
