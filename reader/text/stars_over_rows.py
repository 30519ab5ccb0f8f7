"""Crochet text -> the same text, length kept, without the stars that only mark from where rows are
worked again for a second side: "** Work in pattern on 34 sts. Ch 1, turn. ... Attach yarn to other
side and repeat from **".
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

MARKED = Sought(
    ("**",),
    r"(?P<stars>(?<!\*)\*\*(?!\*))(?P<row>(?:(?!\*\*)[^\n]){8,240}?\bturn\.(?:(?!\*\*)[^\n]|\n(?!\s*\n)){0,1200}?"
    r"\b(?:other|second|opposite|remaining)\b[^.;*]{0,60}\b(?:repeat|rep)\.?\s+from\s+\*\*(?!\*))",
    re.IGNORECASE,
)


def without_side_stars(text: str) -> str:
    """The text so put; any text goes in."""
    return MARKED.sub(lambda found: "  " + found["row"], text)
