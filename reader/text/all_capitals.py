"""Texts in capitals throughout, as typed leaflets are, set as sentences; length kept."""

from __future__ import annotations

import re
from string import ascii_lowercase, ascii_uppercase

LEAST = 200
"""Letters of a text that show how it is set."""
MOSTLY = 0.9
BEGINS = re.compile(r"(?:^|[.:;!?]\s+|\n\s*)[(\[*\s]*[a-z]")
COLUMN = 28
"""Letters of a line that the next one may go on with, where no mark ends it."""
GOING_ON = "\0"
"""Set before such a line while its first letter stays small."""
HEADING = re.compile(r"[^\d,;*]{3,40}")


def as_sentences(text: str) -> str:
    """The text with small letters but where sentences begin, and headings as they are, where all
    of it is in capitals; any other text as it is.
    """
    letters, capitals = _letters(text)
    if letters < LEAST or capitals < MOSTLY * letters:
        return text
    lines, before = [], ""
    for line in text.split("\n"):
        bare = line.strip()
        goes_on = len(before) >= COLUMN and before[-1] not in ".:;!?"
        heading = HEADING.fullmatch(bare) and bare[-1] not in ".:" and len(bare.split()) < 6
        alone = heading and not goes_on
        lines.append(line if alone else GOING_ON * goes_on + _small(line))
        before = "" if alone else bare
    told = BEGINS.sub(lambda found: found.group().upper(), "\n".join(lines))
    return told.replace(GOING_ON, "")


def _letters(text: str) -> tuple[int, int]:
    """How many letters a text has, and how many of them are capitals."""
    if text.isascii():
        small, capitals = (
            sum(map(text.count, letters)) for letters in (ascii_lowercase, ascii_uppercase)
        )
        return small + capitals, capitals
    return sum(map(str.isalpha, text)), sum(map(str.isupper, text))


def _small(line: str) -> str:
    """The line in small letters, one for one."""
    return "".join(one.lower() if len(one.lower()) == 1 else one for one in line)
