"""Clean text -> the same text, length kept, without the slip stitch that only levels a round's end:
"inc 8 sts in each round, ending last round with a sl st". It is none of the round's stitches.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

LEVELLED = Sought(
    ("sl st", "slip st", "slst", "slipst"),
    r"(?:\s*[,;]\s*(?:and\s+|then\s+)?|\s+and\s+)(?:end|ending|finish|finishing|close|closing)\s+"
    r"(?:(?:the|this|each|every|last|final|of|each\s+of\s+the)\s+){0,3}(?:row|rnd|round)s?\s+"
    r"(?:off\s+)?with\s+(?:a|an|one|1)?\s*sl(?:ip)? ?st(?:itch)?\b"
    r"(?:\s+(?:in(?:to)?|to)\s+(?:the\s+)?(?:next|first|1st|following)\s+"
    r"(?:s ?c|h?d ?c|sdc|s d c|st|stitch)\b)?(?=\s*(?:[.,;)(]|and\b|$))",
    re.IGNORECASE,
)


def without_levelling(text: str) -> str:
    """The text with such words blank."""
    return LEVELLED.sub(lambda found: re.sub(r"\S", " ", found.group()), text)
