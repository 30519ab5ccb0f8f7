"""Rows that are called by the part that they belong to, "Body rnd 2: Rep Body rnd 1" -> the same
text, length kept, without that word before the number.
"""

from __future__ import annotations

import re

_ROWS = r"(?:rounds?|rnds?|rds?|rows?)"
LABELLED = re.compile(
    r"^[ \t>*•-]*(?P<part>(?!(?:next|rep|repeat|work|last|first|then|and|the|this|each|every|see"
    r"|begin|beginning"
    r"|start|starting|finish|continue|follow|following|same|turn|only|inc|dec|increase|decrease"
    r"|foundation|chart|all"
    r"|even|odd|right|wrong|set|base|final|eyelet|in|for|on|after|before|until|as|like|to|from"
    r"|between)\b)"
    rf"[A-Za-z]{{3,12}}) {_ROWS} \d",
    re.MULTILINE | re.IGNORECASE,
)


def without_row_adjectives(text: str) -> str:
    """The text without such words, where two lines at least are labelled with one; any text goes
    in.
    """
    parts = [found["part"] for found in LABELLED.finditer(text)]
    for part in {one for one in parts if parts.count(one) > 1}:
        text = re.sub(
            rf"\b{part} (?={_ROWS} \d)", " " * (len(part) + 1), text, flags=re.IGNORECASE
        )
    return text
