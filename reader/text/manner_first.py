"""Knitting text -> the same text, length kept, with changes whose manner is told before how often
they are made put as one: "Dec 1 st each end every other row in following manner. (K 2, ssk, ...).
Decrease every other row 39 times." as "Dec 1 st each end ... every other row 39 times."
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

_ROWS = r"(?:rows?|rnds?|rounds?)"
_WAY = r"(?:dec|inc)(?:reas(?:e|es|ing|ings))?\b\.?"
_ON = r"(?:right side|wrong side|knit|purl|k|p|rs|ws)"
_PACE = (
    r"(?:(?:on|in|at)\s+)?(?:every|each)\s+(?:(?:other|alternate|alt\.?|2nd|second|\d+(?:th|rd|st)"
    rf"|{_ON})\s+)?{_ROWS}\b(?:\s+on\s+(?:the\s+)?(?:right|wrong)\s+side|\s*\((?:on\s+)?(?:the\s+)?"
    r"(?:right|wrong) side(?: only)?\))?"
)
_N = r"(?:\d+(?:\s*[(\[][\d\s,:;/-]+[)\]])?\s+(?:more\s+)?times|twice)"
NUMBER_LAST = Sought(
    ("every", "each"),
    rf"(?P<change>\b{_WAY}\s+(?:1|one|2|two)\s+(?:sts?|stitch(?:es)?)\s+[^.;:\d()]{{0,60}}?)"
    rf"(?P<pace>,?\s*\b{_PACE})(?P<manner>(?!\s*(?:until|till|\d|twice|once))"
    r"(?:(?!\b(?:bind|cast|work\s+even|until|till|times|twice|rows?\s+\d|\d+(?:st|nd|rd|th)\s+row"
    r"|repeat)\b).){0,500}?)"
    rf"(?P<stop>[.;)]\s+(?:(?:then|now)\s+)?(?:continue\s+to\s+)?)(?P<again>{_WAY}\s+"
    rf"(?:(?:1|one)\s+(?:sts?|stitch)\s+)?(?:in\s+this\s+(?:way|manner)\s+|thus\s+|so\s+"
    rf"|in\s+same\s+manner\s+)?)(?P<pace2>{_PACE}\s+)(?={_N})",
    re.IGNORECASE | re.DOTALL,
)
""" "... in the same manner as back. Dec every other row 39 times"."""
TIMES_LAST = Sought(
    ("times", "twice"),
    rf"(?P<change>\b{_WAY}\s+(?:1|one|2|two)\s+(?:sts?|stitch(?:es)?)\s+[^.;:\d()]{{0,60}}?"
    rf"\b{_PACE})(?P<manner>,?\s+(?:(?:in|as)\s+(?:the\s+)?(?:following|follows)\b"
    r"(?:(?!\b(?:bind|cast|work\s+even|until|till|times|twice|rows?\s+\d|\d+(?:st|nd|rd|th)\s+row"
    r"|repeat)\b).){0,400}?)"
    r"[.;)]\s+)(?P<again>(?:do|work|make|repeat)\s+(?:this|these|the)(?:\s+dec\w*|\s+inc\w*)?\s+)"
    rf"(?={_N})",
    re.IGNORECASE | re.DOTALL,
)
""" "Dec 1 st each end every other row as follows: k 2, ssk, ... Do this 12 times"."""


MORE = re.compile(
    r"[^.;]{0,30}?\b(?:more\s+times|times\s+more|once\s+more|twice\s+more)", re.IGNORECASE
)
"""So often beside the first."""


def number_first(text: str) -> str:
    """The text so put; any text goes in."""
    return TIMES_LAST.sub(_times_last, NUMBER_LAST.sub(_together, text))


def _blank(said: str) -> str:
    return re.sub(r"\S", " ", said)


def _together(found: re.Match[str]) -> str:
    """The change with its second pace, which is told with the number."""
    told = found["pace"] + found["manner"] + found["stop"] + found["again"]
    if "\n\n" in told:
        return found.group()
    more = MORE.match(found.string, found.end())
    first = " next row and" if more is not None else ""
    return f"{found['change']}{first}{_blank(told)[len(first) :]}{found['pace2']}"


def _times_last(found: re.Match[str]) -> str:
    told = found["manner"] + found["again"]
    return found.group() if "\n\n" in told else found["change"] + _blank(told)
