"""The word that tells to repeat where a list in brackets and how far say it too: "rep (sc, inc)
around", "repeat *k1, p1* over and over to the end" -> "(sc, inc) around"; length kept.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

_FAR = (
    r"(?=,? ?(?:until|till|til|up to|to|as far|all|around|across|along|over and over|for (?:the|a)"
    r"|x ?\d|\d+ ?x\b|\d+ times|twice|(?:three|four|five|six|seven|eight|nine|ten|twelve) times)\b)"
)
TOLD = Sought(
    ("rep",),
    r"\b(?P<told>(?:rep|repeat|repeating)\.?:?(?: the following:?)? ?)"
    r"(?P<list>\((?![^()\n]*\b(?:rows?|rounds?|rnds?|rep)\b)[^()\n]*[a-z][^()\n]*\)"
    r"|\[(?![^\[\]\n]*\b(?:rows?|rounds?|rnds?|rep)\b)[^\[\]\n]*[a-z][^\[\]\n]*\]"
    rf"|\*(?! ?to \*)(?![^*\n]*\b(?:rows?|rounds?|rnds?|rep)\b)[^*\n.;]*[a-z0-9][^*\n]*\*){_FAR}",
    re.IGNORECASE,
)
OVER = Sought(
    ("over and over", "over & over", "again and again"),
    r"\b(?:over (?:and|&) over|again and again)(?: again)?(?=,? (?:until|till|til|to|up to|as far"
    r"|around|across|all)\b)",
    re.IGNORECASE,
)


def lists_told(text: str) -> str:
    """The text without such words; any text goes in."""
    text = TOLD.sub(lambda found: found["list"].rjust(len(found.group())), text)
    return OVER.sub(lambda found: " " * len(found.group()), text)
