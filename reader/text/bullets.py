"""Rows of a list whose lines a copy ran together, "»Row 1: Knit »Row 2: Purl": each bullet is put
back to the line's end it was; length kept.
"""

from __future__ import annotations

from reader.text.sought import Sought

MARKS = "»•●▪■◦‣⁃∙"
BULLET = Sought(tuple(MARKS), rf"(?<=\S)[ \t]*(?P<marks>[{MARKS}]+)[ \t]*(?=\S)")
LEAST = 3
"""Bullets inside lines that make a list of them; one or two may be anything."""


def unbulleted(text: str) -> str:
    """The text with such bullets as ends of lines; any other text as it is."""
    if len(BULLET.findall(text)) < LEAST:
        return text
    return BULLET.sub(lambda found: "\n\n"[: len(found.group())].ljust(len(found.group())), text)
