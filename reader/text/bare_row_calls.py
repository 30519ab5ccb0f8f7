"""Rows told by the numbers of others, without a verb: "Rows 4-7: 2nd and 3rd rows alternately",
"4th to 9th rows: rows 2 and 3 three times" -> "Rows 4-7: as 2-3", "...: as 2-3 three times"; length
kept.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

_WORD = r"(?:rounds?|rnds?|rds?|rows?)"
_ORD = r"(?:st|nd|rd|th|d)"
_LABEL = (
    rf"(?P<label>^[ \t]*(?:{_WORD}\.? ?\d[^:.)\n]{{0,16}}[:.)]|R\d[^:.)\n]{{0,10}}[:.)]"
    rf"|\d{{1,3}}{_ORD}[^:.\n]{{0,14}}{_WORD}[:.]|{_WORD} ?\d[\d to,&-]{{0,9}} [-—]"
    r"|\d{1,3}(?: ?(?:-|—|to) ?\d{1,3})?[.:)])[ ]+)"
)
CALLED = Sought(
    ("row", "rnd", "round", "rd"),
    rf"{_LABEL}(?P<call>(?:(?P<lead>another (?:one|two|three|four|\d) of )?{_WORD} (?P<a>\d{{1,3}})"
    rf" ?(?:and|&|-|—|to|,|through) ?(?:{_WORD} )?(?P<b>\d{{1,3}})"
    rf"|(?P<c>\d{{1,3}}){_ORD} ?(?:and|&|-|—|to|through) ?(?P<d>\d{{1,3}}){_ORD} {_WORD}))"
    r"(?P<turns>,? (?:alternately|in turn|by turns|over and over|in alternation))?"
    r"(?=[ ]*(?:[.;,]|$|(?:once|twice|thrice|\w+ times|\w+ more|again|over again|repeated)\b))",
    re.IGNORECASE | re.MULTILINE,
)


def with_as(text: str) -> str:
    """The text with such rows as others call them; rows that do not follow each other as they
    are.
    """
    return CALLED.sub(_as, text)


def _as(found: re.Match[str]) -> str:
    first, last = int(found["a"] or found["c"]), int(found["b"] or found["d"])
    often = found.string[found.end() : found.end() + 6].strip(" ")
    said = f"as {first}-{last}" + ("," if often[:1].isalpha() else "")
    room = len(found["call"]) + len(found["turns"] or "")
    if not first < last or len(said) > room:
        return found.group()
    return found["label"] + said.rjust(room)
