"""A stitch that is let down some rows and worked with the strands above it, "drop next st down 3
rows, insert needle in st and under strands, K the st", put as the one stitch that it is; length
kept.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

DROPPED = Sought(
    ("drop",),
    r"\bdrop\s+(?:the\s+|1\s+|one\s+)?(?:next\s+)?(?:st|stitch)\b(?:\s+(?:off|from)\s+(?:the\s+)?"
    r"(?:left\s+)?needle)?,?\s+(?:(?:and\s+)?(?:let\s+it\s+run\s+|ravel\s+(?:it\s+)?)?down\s+)?"
    r"(?:for\s+)?(?:\d|two|three|four|five|six)\s+rows(?:\s+(?:down|below))?\b[^;*.]{0,160}?"
    r"[,;]\s+(?:and\s+|then\s+)*(?P<verb>k|knit|p|purl)\s+(?:the\s+(?:st|stitch|loop)|it)\b"
    r"(?:\s+(?:with|together\s+with|and)\s+(?:the\s+)?strands)?",
    re.IGNORECASE,
)


def worked_down(text: str) -> str:
    """The text with such stitches put so; any text goes in."""
    return DROPPED.sub(lambda found: f"{found['verb']} 1".ljust(len(found.group())), text)
