"""Rows called back one by one: "rows 3 and 2", "rows 2, 4 and 6", "row 3, then row 2, twice".

Their order is that of the words, and rows that lie between two that are named are not meant.
"""

from __future__ import annotations

import re
from itertools import pairwise

_ROWS = r"(?:rows?|rnds?|rounds?|rds?|r(?=\d))"
_NTH = r"(?:st|nd|rd|th|d)\b"
_COUNTS = (
    r"(?:more|extra|additional|further|other|fewer|less|times|x\b|sts?\b|stitches|inch|cm|[sd]c\b"
    r"|h?dc\b|h?tr\b|ch\b|rows?\b(?!\s*\d)|rnds?\b(?!\s*\d)|rounds?\b(?!\s*\d))"
)
"""Behind a number, these say that it counts something."""
_ONE = rf"(?:(?P<nth>\d{{1,3}}){_NTH}|(?P<n>\d{{1,3}})(?!\d|\.\d| ?{_COUNTS}))"
_NAMED = rf"\s*(?:the\s+)?(?P<rows>{_ROWS}\s*)?{_ONE}(?:\s*{_ROWS}(?!\s*\d))?"
NAMED = re.compile(_NAMED, re.IGNORECASE)
NEXT = re.compile(
    r"\s*(?:,\s*(?:and|&)|,(?!\s*(?:and\s+)?then)|and\s+then|and|&|\+|followed\s+by|then"
    r"|,\s*(?:and\s+)?then(?=[^,;.]*,?\s*(?:alternat|(?:\w+\s+){0,2}times|twice|once\s+more)))"
    r"(?=\s*(?:the\s+)?(?:r\w*\s*)?\d)",
    re.IGNORECASE,
)
"""Between two rows of a list; ", then" only where a number of times is told of them both."""
UP_TO = re.compile(rf"\s*(?:-|—|to|through|thru)\s*(?={_ROWS}|\d)", re.IGNORECASE)
ALTERNATELY = re.compile(r",?\s+(?:alternately|alternating|by turns|in turns?)\b", re.IGNORECASE)


def rows_listed(words: str, at: int) -> tuple[tuple[int, ...], int]:
    """The numbers of the rows named from there, in their order, and where the list ends; none
    where they are no list, or only a range.
    """
    several = words[:at].rstrip().lower().endswith("s")
    found, end = NAMED.match(words, at), at
    numbers: list[int] = []
    while found is not None:
        number, end = _number(found), found.end()
        upto = UP_TO.match(words, end)
        last = NAMED.match(words, upto.end()) if upto else None
        if last is not None and number < _number(last) < number + 100:
            numbers += range(number, _number(last))
            number, end = _number(last), last.end()
        elif last is not None:
            return (), at
        numbers.append(number)
        found = _following(words, end, several)
    turns = ALTERNATELY.match(words, end)
    return tuple(numbers), turns.end() if turns else end


def _following(words: str, at: int, several: bool) -> re.Match[str] | None:
    """The next row of the list; a bare number behind a comma is none where one row was named, "rep
    row 3, 2 on each side".
    """
    mark = NEXT.match(words, at)
    found = NAMED.match(words, mark.end()) if mark else None
    bare = found is not None and not (found["rows"] or found["nth"])
    comma = mark is not None and mark.group().strip() == ","
    return None if bare and comma and not several else found


def _number(found: re.Match[str]) -> int:
    return int(found["n"] or found["nth"])


def in_order(numbers: tuple[int, ...]) -> bool:
    """Whether the rows are all of a stretch, one after the other."""
    return all(later == one + 1 for one, later in pairwise(numbers))
