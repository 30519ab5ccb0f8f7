"""Divisions of a piece by their number, "Third division", and the words that call one of them back:
"the third division is to be repeated", "repeat the second stripe twice" -> its rows again.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from reader.counts.narrowed import hear
from reader.pattern.figures import tightened
from reader.pattern.goals import times_in
from reader.terms.numbers import ORDINALS, ordinal_number
from reader.terms.stitches import Craft

if TYPE_CHECKING:
    from reader.counts.entries import Entry
    from reader.counts.ledger import Ledger
    from reader.pattern.layout import WrittenRow

_ORD = rf"(?:{'|'.join(ORDINALS)}|\d+(?:st|nd|rd|th))"
_WHAT = r"(?:division|section|stripe|band|block|portion)"
HEADED = re.compile(
    rf"\W*(?P<numbers>{_ORD}(?:\W+(?:and\W+)?{_ORD})*)\W*(?:{_WHAT}s?)?\b\W*(?:[a-z]+\W*){{0,2}}",
    re.IGNORECASE,
)
"""A note that is only the number of a division, or of several, with its colour perhaps."""
CALLED = re.compile(
    rf"\W*(?:(?:then|now|and)\s+)*(?:(?:repeat|work)\s+(?:the\s+)?(?P<a>{_ORD})\s+{_WHAT}"
    rf"|(?:the\s+)?(?P<b>{_ORD})\s+{_WHAT}\s+(?:is|are|must be)\s+(?:to be\s+)?repeated"
    rf"|repeat\s+{_WHAT}\s+(?P<c>\d))\b(?P<rest>[^.;]*)[.;]?\s*$",
    re.IGNORECASE,
)
LONGEST = 80
"""Characters of a heading."""


def heard(ledger: Ledger, start: int, end: int) -> None:
    """Takes what a note between knitted rows tells: a total, where a division begins that it heads,
    or which one is worked again.
    """
    hear(ledger, start, end)
    words = ledger.text[start:end].replace("_", " ")
    found = HEADED.fullmatch(words) if len(words) < LONGEST else None
    if found:
        numbers = [_number(one) for one in re.findall(_ORD, found["numbers"], re.IGNORECASE)]
        ledger.divisions[numbers[0]] = len(ledger.entries)
        ledger.headed = len(numbers)
        return
    _call_back(ledger, start, end)


def division_again(ledger: Ledger, row: WrittenRow) -> bool:
    """Works a division again where a row calls it back; False, and nothing worked, elsewhere."""
    knits = ledger.pattern.craft is Craft.KNITTING
    return knits and row.mark is None and _call_back(ledger, row.start, row.end)


def _call_back(ledger: Ledger, start: int, end: int) -> bool:
    from reader.pattern.layout import WrittenRow

    found = CALLED.fullmatch(tightened(ledger.text[start:end]))
    rows = _rows_of(ledger, _number(found["a"] or found["b"] or found["c"])) if found else []
    if not rows or found is None:
        return False
    times, ledger.headed = times_in(found["rest"]) or ledger.headed, 1
    for _ in range(times):
        for entry in rows:
            if not ledger.full():
                number = ledger.number + 1 if ledger.number else None
                ledger.again(entry, number, WrittenRow(None, start, end))
    return True


def _rows_of(ledger: Ledger, number: int) -> list[Entry]:
    """The rows of a division of this piece, up to the next that is headed."""
    begin = ledger.divisions.get(number)
    if begin is None:
        return []
    later = [at for at in ledger.divisions.values() if at > begin]
    return ledger.entries[begin : min(later, default=len(ledger.entries))]


def _number(said: str) -> int:
    return int(re.sub(r"\D", "", said)) if said[:1].isdigit() else ordinal_number(said) or 0
