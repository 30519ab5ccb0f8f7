"""A text's first line as its title, where it is a few words and no instruction; else ""."""

from __future__ import annotations

from reader.pattern.line_words import MATERIALS, STITCHY

LONGEST = 60


def title_line(text: str) -> str:
    """That line; any text goes in."""
    line = text.strip().split("\n")[0].strip()
    plain = len(line) <= LONGEST and line[:1].isupper() and line[-1:] not in ".:;"
    return line if plain and not STITCHY.search(line) and not MATERIALS.match(line) else ""
