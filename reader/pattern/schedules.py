"""Rows told by their colours: "2 rounds Red, 1 round White, * 1 round Blue, 1 round White, repeat
from * once", "2 rows each Red, Blue and White" -> how many rows.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from reader.pattern.rule import Rule

_NAME = r"(?:(?:Lt\. |Dk\. |Med\. )?[A-Z][A-Za-z]*(?: [A-Z][A-Za-z]*){0,2})"
_ROWS = r"(?:more\s+)?(?:rows?|rnds?|rounds?)"
_WITH = r"(?:in |of |with )?"
_MORE = rf"(?:(?:,\s*and|,|\s+and|\s*&)\s+{_WITH}{_NAME}(?!\s*:))*"
_ITEM = (
    rf"(?:(?:the\s+)?next\s+)?(?P<n>\d+)\s+{_ROWS}\s+"
    rf"(?:each\s+{_WITH}(?P<list>{_NAME}{_MORE})|{_WITH}{_NAME})"
)
ITEM = re.compile(_ITEM)
_PLAIN = re.sub(r"\?P<\w+>", "?:", _ITEM)
_BACK = (
    r"(?:and\s+)?repeat from (?:the )?(?:last |1st |first )?\*(?:\s+(?:\d+ (?:more )?times|once"
    r"|twice))?(?:,?\s*(?:ending|end|then)(?: with)?)?"
)
SCHEDULE = re.compile(
    rf"(?:\*\s*)?{_PLAIN}(?:\s*(?:,\s*then|,\s*and|,|;|and then|and|then|,?\s*\*|,?\s*{_BACK})\s*"
    rf"(?:\*\s*)?(?:{_PLAIN})?)*"
)
STARRED = re.compile(
    r"\*(?P<body>[^*]*),?\s*repeat from (?:the )?(?:last |1st |first )?\*\s*"
    r"(?P<times>\d+ (?:more )?times|once|twice)?"
)
INSTEAD = re.compile(r"ending last repeat with (\d+) rows? [A-Z]\w* instead of (\d+) rows?")
COLOUR = re.compile(_NAME)


@dataclass(frozen=True, slots=True)
class Schedule:
    """rows: how many in all. start, end: where the words stand."""

    rows: int
    start: int
    end: int


def find_schedule(words: str) -> Schedule | None:
    """The first list of rows by colours in the words (numbers in figures), None where there is none
    of at least two.
    """
    found = next((one for one in SCHEDULE.finditer(words) if _colours(one.group()) > 1), None)
    if found is None:
        return None
    said = found.group()
    rows = _rows(said)
    for star in STARRED.finditer(said):
        rows += _rows(star["body"]) * _times(star["times"])
    instead = INSTEAD.search(words, found.end() - 1)
    if instead is not None:
        rows += int(instead.group(1)[:3]) - int(instead.group(2)[:3])
    return Schedule(rows, found.start(), found.start() + len(said.rstrip(" ,;")))


def _colours(said: str) -> int:
    """How many colours follow each other."""
    return sum(len(COLOUR.findall(one["list"] or "A")) for one in ITEM.finditer(said))


def _rows(said: str) -> int:
    """The rows of a list: "2 rows each" as often as there are colours."""
    return sum(
        int(one["n"][:3]) * len(COLOUR.findall(one["list"] or "A")) for one in ITEM.finditer(said)
    )


def _times(said: str | None) -> int:
    if said is None or said == "once":
        return 1
    return 2 if said == "twice" else int(said.split()[0][:3])


COLOURED = re.compile(
    r"(?:^\W*|(?<=[.,;:)\]]\s)|(?<=\band\s)|(?<=\bthen\s)"
    r"|(?<=\bsts\s)|(?<=\bstitches\s)|(?<=\bloop\s)|(?<=\bloops\s))(?:(?:[Tt]hen|[Nn]ow|[Nn]ext)\s+)*"
    r"(?:(?:[Ww]orking|[Cc]ontinuing|[Kk]eeping)\s+(?:even\s+|straight\s+)?in\s+[^.;:\d]{2,30}?,?\s+)?"
    rf"(?:[Ww]ork|[Mm]ake|[Dd]o|[Cc]rochet|[Cc]ontinue(?:\s+with)?)\s+\d+\s+{_ROWS}\s+"
    rf"(?:each\s+)?{_WITH}[A-Z]"
)
"""Rows told by their colours: "work 3 rows Red and 3 rows White"."""


def coloured_rows(words: str, upto: int) -> Rule | None:
    """ "Work 3 rows Red and 3 rows White" as so many rows, where it is told before `upto`; "until
    there are 6 stripes of each color" as so many in all.
    """
    found = COLOURED.search(words)
    planned = find_schedule(words[found.start() :]) if found else None
    if not found or planned is None or found.start() > upto:
        return None
    start, end = found.start(), found.start() + planned.end
    stripes = STRIPES.search(words, end)
    if stripes is None or stripes.start() > end + 16:
        return Rule("even", rows=planned.rows, start=start, end=end)
    rows = rows_of_stripes(words[start : stripes.end()]) or planned.rows
    return Rule("even", rows=rows, start=start, end=stripes.end(), until_row=rows)


STRIPES = re.compile(
    r"\b(?:until|till|for)\b[^.;]*?\b(?P<n>\d+)\s+(?:complete\s+|full\s+)?stripes\b"
    r"(?P<each>\s+(?:(?:of|in|for)\s+)?(?:each|both|either)\b)?",
    re.IGNORECASE,
)
"""How far stripes go: "until there are 6 stripes of each color"."""


def rows_of_stripes(words: str) -> int | None:
    """The rows of so many stripes, where the words tell how many rows each colour has; None where
    they tell of no stripes.
    """
    found = STRIPES.search(words)
    items = [one for one in ITEM.finditer(words) if int(one["n"][:3]) < 100]
    if found is None or not items:
        return None
    each = [int(one["n"][:3]) for one in items for _ in COLOUR.findall(one["list"] or "A")]
    number = int(found["n"][:3])
    if found["each"]:
        return number * sum(each)
    return sum(each) * (number // len(each)) + sum(each[: number % len(each)])
