"""Labels that lack their mark, "1 - Ch 13. Inc in ...", "R1 hdc in third ch", get it; length kept.
"""

from __future__ import annotations

import re
from itertools import pairwise

_MORE = r"(?:[ ]?(?:-|to|,|&)[ ]?\d{1,3})?"
DASHED = re.compile(
    rf"^(?P<label>[ ]*(?P<first>\d{{1,3}}){_MORE}) [-—] (?=[A-Za-z(*\[\d])", re.MULTILINE
)
BARE = re.compile(
    rf"^(?P<label>[ ]*(?:R|rnd|round|row|rd)[ ]?(?P<first>\d{{1,3}}){_MORE})[ ]"
    r"(?=\d+ ?[a-z]|[a-z(*\[])(?!(?:to|and|through|of|is|are|in|for|has|have|on)\b)"
    r"(?![^:\n.]{0,40}:)",
    re.MULTILINE | re.IGNORECASE,
)
LEAST = 3
"""Lines labelled so, one after the other from 1, that make them rows."""


def numbered(text: str) -> str:
    """The text with the mark behind each row's number put in, where its lines count on from 1."""
    if _counts_on(DASHED, text):
        text = DASHED.sub(lambda found: f"{found['label']}.  ", text)
    if _counts_on(BARE, text):
        text = BARE.sub(lambda found: f"{found['label']}:", text)
    return text


def _counts_on(shape: re.Pattern[str], text: str) -> bool:
    firsts = [int(found["first"]) for found in shape.finditer(text)]
    if len(firsts) < LEAST or firsts[0] != 1:
        return False
    return all(a < b or b == 1 for a, b in pairwise(firsts))
