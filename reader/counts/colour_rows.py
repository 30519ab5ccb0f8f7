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
_ROWS = r"(?:rows?|rnds?|rounds?|rds?)"
_YARN = rf"(?:{_SHADE}|colou?r [A-H]|(?-i:[A-H]|MC|CC\d?))\b"
STRIPES = re.compile(
    r"\W*(?:(?:work|keep|go|carry on|continue|alternat(?:e|ing)|repeat|in|of|stripes?|with|always"
    r"|the same|plain|between)\b[\s:,]*){0,5}"
    rf"(?:{_N}\s+{_ROWS}\s+(?:(?:in|of|with)\s+)?{_YARN}[\s,;]*(?:(?:and|then|next)\s+)*){{2,8}}"
    rf"(?:[\s,]*(?:alternately|in turn|by turns|throughout|repeat(?:ed|ing)?|again|twice|once more"
    rf"|{_N} (?:more )?times|to the end|and so on|as set|all plain)\b){{0,3}}\W*",
    re.IGNORECASE,
)
"""Rows of which only their stripes are told: "alternate 2 rnds red and 2 rnds white"."""
STRIPED = "as the row before, only its colour is told"
WHY = "the stitches of each colour added up"


def told_by_colours(ledger: Ledger, row: WrittenRow) -> bool:
    """Books a round that is told so; False, and nothing booked, for every other row."""
    if row.mark is not None and _striped(ledger, row):
        for _ in row.mark.numbers:
            ledger.even(ledger.below.stitches, row.mark, row.start, row.end, STRIPED)
        return True
    if row.mark is None or not BEGINS.match(ledger.text, row.start, row.end):
        return False
    count = stitches_told(" ".join(ledger.text[row.start : row.end].split()))
    if count is None:
        return False
    for _ in row.mark.numbers:
        ledger.even(count, row.mark, row.start, row.end, WHY)
    return True


def _striped(ledger: Ledger, row: WrittenRow) -> bool:
    """Whether a label of several rows stands before nothing but their stripes."""
    several = row.mark is not None and len(row.mark.numbers) > 1
    if not several or ledger.below.stitches is None or ledger.below.spaces:
        return False
    return STRIPES.fullmatch(" ".join(ledger.text[row.start : row.end].split())) is not None


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
