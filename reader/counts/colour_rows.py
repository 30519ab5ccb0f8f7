"""Rounds that are told only by how many stitches each colour has: "12 stitches, blue", "18 ditto",
"1 gold, 3 blue on 2, 2 gold. 4 times" -> the stitches of the round, added up.

How they lie on those below such words leave to the maker's eye, so that nothing is held against the
row below.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from reader.pattern.knitting_fabric import COLOURS
from reader.pattern.layout import WrittenRow
from reader.terms.numbers import SPELLED, word_number

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

_N = rf"(?:\d{{1,3}}|{SPELLED})"
_COLOUR = rf"(?:{'|'.join(sorted(COLOURS - {'main', 'pattern', 'background', 'ground'}))})"
_SHADE = rf"(?:(?:light|dark|pale|deep)\s+)?{_COLOUR}"
ITEM = re.compile(
    rf"(?P<n>{_N})\s+{_SHADE}\b(?:\s*\([^()]{{1,60}}\))?"
    rf"(?:\s+(?:on|over|in)\s+[^,;.()]{{1,40}}|\s+as\s+before)?(?:\s*\([^()]{{1,60}}\))?",
    re.IGNORECASE,
)
_ONE = ITEM.pattern.replace("?P<n>", "?:")
LIST = re.compile(
    rf"\W*{_ONE}(?:[\s,;.]+(?:and\s+)?{_ONE})*[\s,;.]*"
    rf"(?:(?P<times>{_N})\s+times|(?:all\s+)?(?:a?round))?[\s.]*",
    re.IGNORECASE,
)
WHOLE = re.compile(
    rf"\W*(?P<n>{_N})\s+(?:(?:stitches|sts|loops)(?:\s*,?\s*(?:in|of)?\s*{_SHADE})?|ditto|do\.)[\s.]*",
    re.IGNORECASE,
)
BEGINS = re.compile(rf"\W*{_N}\s", re.IGNORECASE)
"""How words that either is begin."""
WHY = "the stitches of each colour added up"


def told_by_colours(ledger: Ledger, row: WrittenRow) -> bool:
    """Books a round that is told so; False, and nothing booked, for every other row."""
    if row.mark is None or not BEGINS.match(ledger.text, row.start, row.end):
        return False
    count = stitches_told(" ".join(ledger.text[row.start : row.end].split()))
    if count is None:
        return False
    for _ in row.mark.numbers:
        ledger.even(count, row.mark, row.start, row.end, WHY)
    return True


def stitches_told(words: str) -> int | None:
    """The stitches of a round told by its colours or by their number alone, None for others."""
    whole = WHOLE.fullmatch(words)
    if whole:
        return _value(whole["n"])
    listed = LIST.fullmatch(words) if ITEM.match(words.lstrip()) else None
    if listed is None:
        return None
    items = [_value(one["n"]) for one in ITEM.finditer(words)]
    times = _value(listed["times"]) if listed["times"] else 1
    return sum(items) * times if len(items) > 1 or listed["times"] else None


def _value(said: str) -> int:
    return int(said) if said.isdigit() else word_number(said) or 0
