"""Clean text -> the same text, length kept, where a sentence says that rows are as others: "8th and
9th rows are the same as 5th and 6th rows" -> "8th and 9th rows:    same as 5th and 6th rows".
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

_ROWS = r"(?:rows?|rnds?|rounds?)"
_NTH = r"\d+(?:st|nd|rd|th|d)"
ALIKE = Sought(
    (" is ", " are "),
    rf"(?P<label>\b{_NTH}(?:(?:, | and |, and | & | to )(?:the )?{_NTH})* {_ROWS}"
    rf"|\b{_ROWS} \d+(?:(?:, | and |, and | & |-| to )\d+)*)"
    r"(?P<verb> (?:is|are)(?: all| both)?(?: to be)?(?: (?:worked|made|done|knitted|crocheted))?"
    r"(?: exactly)?(?: the)?)(?P<as> (?:same as|like|as)\b(?: the\b)?)",
    re.IGNORECASE,
)
REPEATED = Sought(
    (" repeated ",),
    rf"(?:(?<=\n)|(?<=[.;] ))(?P<rows>{_ROWS} \d+(?:(?: and | & |-| to )\d+)?)"
    r" (?:is|are)(?: (?:then|now))? repeated"
    r" (?=\d|once|twice|three|four|five|six|seven|eight|nine|ten|until|till|for\b)",
    re.IGNORECASE,
)


def labelled_alike(text: str) -> str:
    """The text with a mark behind such a label, in place of the verb; and rows that are repeated
    told as what is to be done: "Row 2 is repeated twice more" -> "Repeat row 2      twice more".
    """
    return REPEATED.sub(_to_do, ALIKE.sub(_marked, text))


def _to_do(found: re.Match[str]) -> str:
    told = f"Repeat {found['rows'][0].lower()}{found['rows'][1:]}"
    return told.ljust(len(found.group()))[: len(found.group())]


def _marked(found: re.Match[str]) -> str:
    told = f"{found['label']}: {'like' if 'like' in found['as'].lower() else 'same as'}"
    return told.ljust(len(found.group()))[: len(found.group())]
