"""Rows that are only said to be as the one before, "NEXT 10 ROUNDS: Working in same manner as last
round, work 2 rounds Red, 2 rounds White", put as "same as last round"; length kept.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

_ROW = r"(?:row|round|rnd)s?"
AS_LAST = Sought(
    ("manner", "way"),
    rf"(?P<label>\b{_ROW}:\s+)(?:(?:work|continue|knit|rep|repeat)(?:ing)?\s+)?in\s+(?:the\s+)?"
    rf"(?:same|like)\s+(?:manner|way)(?:\s+as\s+(?:the\s+|in\s+)*(?:last|previous)\s+{_ROW})?"
    rf"(?P<colours>,\s+(?:work(?:ing)?\s+)?(?:the\s+)?(?:next\s+)?\d+\s+{_ROW}\s+(?:of\s+|in\s+)?"
    rf"[A-Z][^.;]{{0,160}})?(?=\s*[.;\n])",
    re.IGNORECASE,
)


def as_last_row(text: str) -> str:
    """The text with them put so; any text goes in."""
    return AS_LAST.sub(_put, text)


def _put(found: re.Match[str]) -> str:
    room = len(found.group()) - len(found["label"])
    told = "same as last row"
    return found["label"] + told.ljust(room) if len(told) <= room else found.group()
