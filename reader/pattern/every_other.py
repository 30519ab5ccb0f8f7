"""Words that make one row stand for every other: "2nd row and every alternate row:", "all even
rows:", "this round is repeated after every pattern round" -> patterns to find them by.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

_ROUND = r"(?:rounds?|rnds?|rds?|rows?|needles?)"
_SIDE = r"(?:ws|rs|(?:wrong|right)[ -]side)"
_SECOND = r"(?:(?<=every\s)|(?<=each\s))(?:2nd|second)"
""" "The first and second rows" are two, "the first and every second row" many."""
_WHICH = rf"(?P<which>even|odd|{_SIDE}|other|alt\w*|foll\w*|{_SECOND}|uneven)"
_END = r"\s*(?:[:.]+(?:\s?-+|\s?—)?|—|-+(?=\s|[A-Za-z(*]))"
ROW_AND_OTHERS = re.compile(
    rf"(?:(?P<what>{_ROUND})\s*(?P<nums>\d+)|(?P<ord>\d+(?:st|nd|rd|th|d)|second|first)"
    rf"(?:\s+(?P<what2>{_ROUND}))?)(?:\s*\({_SIDE}\))?\s*,?\s*\(?(?:and|&)\s+"
    rf"(?:(?:all|every|each|foll\w*|the)\.?\s+)*{_WHICH}\b\.?[^:.)—]{{0,24}}(?:{_ROUND})?\.?\)?{_END}",
    re.IGNORECASE,
)
"""A row's number with "and every alternate row" behind it."""
OTHERS_ONLY = re.compile(
    rf"(?:(?:all|every|each)\s+(?:the\s+)?(?:foll\w*\s+)?|(?=(?:even|odd|uneven|ws|rs)\s+\w+s\b)){_WHICH}"
    rf"\s+(?P<what>{_ROUND}){_END}",
    re.IGNORECASE,
)
"""No number: "every alternate row:"; the row stands between the others."""
SAID_OF_IT = Sought(
    ("alt", "even", "odd", "2nd", "second", "purled", "same",
     "repeat", "work", "knit"),
    rf"\b(?:every|each|all)\s+(?:the\s+)?(?:other\s+)?(?:alternate|even|odd|2nd|second|alt)\s+"
    rf"{_ROUND}\s+(?:is\s+|are\s+)?(?:the\s+same|alike|like\s+this|worked\s+so|as\s+this)"
    rf"|\b{_ROUND}\s+is\s+(?:repeated|worked|knitted|purled|the\s+same)\s+(?:after|between|in)\s+"
    rf"(?:every|each)\s+(?:\w+\s+)?{_ROUND}"
    rf"|\b(?:repeat|work|knit)\s+(?:this|that|the\s+last)\s+{_ROUND}\s+(?:after|between)\s+"
    rf"(?:every|each|all)\s+(?:of\s+)?(?:the\s+|these\s+)?(?:\w+\s+)?{_ROUND}"
    rf"|\((?:[^()\d]{{0,30}}\b)?(?:(?:on|for|in|all|every|each|the)\s+)+(?:other\s+)?even"
    rf"(?:[- ]numbered)?\s+(?:ones|{_ROUND}s?)\)",
    re.IGNORECASE,
)
"""Said inside a row: it comes again after each of those that follow."""
