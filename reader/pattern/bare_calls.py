"""Rows called back by their numbers or letters alone: "do C and D three times more", "work 1 and 2
again twice", "keep alternating A and B until there are 40".
"""

from __future__ import annotations

import re

_CALLS = (
    r"\b(?:rep(?:eat)?|do|work|knit|alternat(?:e|ing)|repeating|working|doing)\s+"
    r"(?:(?:both|between|all|of|the)\s+)*"
)
_AND = r"\s*(?:,|and|&|\+|then|to|-)\s*"
_OFTEN = (
    r"(?=(?:\s+(?:again|over|another|for|a|further))*\s+"
    r"(?:(?:\d+|two|three|four|five|six|seven|eight|nine|ten|twelve)\s+(?:more\s+)?times"
    r"|once|twice|thrice|until|till|til)\b)"
)
BARE_NUMBERS = re.compile(
    rf"(?:^|(?<=[.;:,]\s)|(?<=and\s)|(?<=then\s))\W*(?:now\s+|then\s+|and\s+)?"
    rf"{_CALLS}(?P<a>\d{{1,3}}){_AND}(?P<b>\d{{1,3}}){_OFTEN}",
    re.IGNORECASE,
)
LETTERS = re.compile(rf"{_CALLS}(?-i:[A-H](?:{_AND}[A-H])+)\b", re.IGNORECASE)


def calls_rows(words: str) -> bool:
    """Whether words call rows back of which they say no more than numbers or letters."""
    return LETTERS.search(words) is not None or BARE_NUMBERS.search(words) is not None
