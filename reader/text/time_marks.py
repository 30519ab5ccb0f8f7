"""Clean text -> the same text, length kept, without the times that captions of a film have at the
beginning of their lines: "[1:31] round two chain three" -> "       round two chain three".
"""

from __future__ import annotations

import re

TIMES = re.compile(
    r"^[ \t]*[\[(<]?(?:\d{1,2}:)?\d{1,2}:\d{2}(?:[.,]\d{1,3})?[\])>]?"
    r"(?:[ ]?(?:-->|-|—)[ ]?[\[(<]?(?:\d{1,2}:)?\d{1,2}:\d{2}(?:[.,]\d{1,3})?[\])>]?)?(?=[ \t\n]"
    r"|$)(?:[ ](?:[|:—–-]|->)(?= ))?",
    re.MULTILINE,
)
LEAST = 4
"""Lines with a time that make captions."""


def without_times(text: str) -> str:
    """The text without such times; any text goes in."""
    if ":" not in text or len(TIMES.findall(text)) < LEAST:
        return text
    return TIMES.sub(lambda found: " " * len(found.group()), text)
