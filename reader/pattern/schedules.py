"""Rows told by their colours: "2 rounds Red, 1 round White, * 1 round Blue, 1 round White, repeat
from * once" -> how many rows.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

_COLOUR = r"(?:(?:in |of |with )?(?:Lt\. |Dk\. |Med\. )?[A-Z][A-Za-z]*(?: [A-Z][A-Za-z]*){0,2})"
_ITEM = rf"(?P<n>\d+)\s+(?:more\s+)?(?:rows?|rnds?|rounds?)\s+{_COLOUR}"
ITEM = re.compile(_ITEM)
SCHEDULE = re.compile(
    rf"(?:\*\s*)?{_ITEM.replace('?P<n>', '?:')}(?:\s*(?:,|;|and|,\s*and|,?\s*\*|,?\s*repeat from \*"
    rf"(?:\s+(?:\d+ times|once|twice))?)\s*(?:\*\s*)?(?:{_ITEM.replace('?P<n>', '?:')})?)+"
)
STARRED = re.compile(
    r"\*(?P<body>[^*]*),?\s*repeat from \*\s*(?P<times>\d+ times|once|twice)?"
)
INSTEAD = re.compile(r"ending last repeat with (\d+) rows? [A-Z]\w* instead of (\d+) rows?")


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
    found = SCHEDULE.search(words)
    if found is None or len(ITEM.findall(found.group())) < 2:
        return None
    said = found.group()
    rows = sum(int(n[:3]) for n in ITEM.findall(said))
    for star in STARRED.finditer(said):
        inner = sum(int(n[:3]) for n in ITEM.findall(star["body"]))
        rows += inner * _times(star["times"])
    instead = INSTEAD.search(words, found.end() - 1)
    if instead is not None:
        rows += int(instead.group(1)[:3]) - int(instead.group(2)[:3])
    return Schedule(rows, found.start(), found.end())


def _times(said: str | None) -> int:
    if said is None or said == "once":
        return 1
    return 2 if said == "twice" else int(said.split()[0][:3])
