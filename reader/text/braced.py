"""Clean text -> the same text, length kept, without braces set beside several lines and the word
behind them, "Knit two rows.   } white.", which tells the colour of them all.
"""

from __future__ import annotations

import re

BESIDE = re.compile(
    r"(?P<line>^[^\n{}]*?)(?P<brace>[ ]{2,}\}[ ]*(?:[A-Za-z][A-Za-z -]{0,30}\.?)?[ ]*)$",
    re.MULTILINE,
)
LEAST = 2
"""Lines with a brace that make it one beside them all."""


def unbraced(text: str) -> str:
    """The text without them; a brace that stands beside one line only stays."""
    if text.count("}") < LEAST or "{" in text or len(BESIDE.findall(text)) < LEAST:
        return text
    return BESIDE.sub(lambda found: found["line"].ljust(len(found.group())), text)
