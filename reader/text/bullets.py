"""Rows of a list whose lines a copy ran together, "»Row 1: Knit »Row 2: Purl": each bullet is put
back to the line's end it was; and letters that count lines, "a) Cast on 34", turned to spaces;
length kept.
"""

from __future__ import annotations

import re
from itertools import pairwise

from reader.text.sought import Sought

MARKS = "»•●▪■◦‣⁃∙"
BULLET = Sought(tuple(MARKS), rf"(?<=\S)[ \t]*(?P<marks>[{MARKS}]+)[ \t]*(?=\S)")
LETTER = Sought((")",), r"^[ \t]*(?P<mark>[a-z]\))(?=[ ][A-Z])", re.MULTILINE)
LEAST = 3
"""Bullets inside lines that make a list of them; one or two may be anything."""


def unbulleted(text: str) -> str:
    """The text with such bullets as ends of lines; any other text as it is."""
    text = _unlettered(text)
    if len(BULLET.findall(text)) < LEAST:
        return text
    return BULLET.sub(lambda found: "\n\n"[: len(found.group())].ljust(len(found.group())), text)


def _unlettered(text: str) -> str:
    """The text without the letters of lines that they count."""
    found = list(LETTER.finditer(text))
    letters = [ord(one["mark"][0]) for one in found]
    if len(found) < LEAST or any(b != a + 1 for a, b in pairwise(letters)):
        return text
    return LETTER.sub(lambda m: " " * len(m.group()), text)
