"""Rows numbered by a dash only, "1 - Ch 13. Inc in ...", get the full stop of a label; length kept.
"""

from __future__ import annotations

import re
from itertools import pairwise

LINE = re.compile(
    r"^(?P<number>[ ]*(?P<first>\d{1,3})(?:[ ]?(?:-|to|,|&)[ ]?\d{1,3})?) (?P<dash>[-—]) "
    r"(?=[A-Za-z(*\[\d])",
    re.MULTILINE,
)
LEAST = 3
"""Lines numbered so, one after the other from 1, that make them rows."""


def numbered(text: str) -> str:
    """The text with the dash behind each row's number put right, where lines count on from 1."""
    firsts = [int(found["first"]) for found in LINE.finditer(text)]
    counts_on = firsts[:1] == [1] and all(a < b or b == 1 for a, b in pairwise(firsts))
    if len(firsts) < LEAST or not counts_on:
        return text
    return LINE.sub(lambda found: f"{found['number']}.  ", text)
