"""Clean text of a crochet pattern -> the same text, length kept, without the care that a chain be
not twisted: "join taking care not to twist ch" is a join, to nothing of that name.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

CHAIN = r"(?:ch(?:ain)?|sts|stitches|it|work)"
CARE = Sought(
    ("twist",),
    r"\s*,?\s+(?:and\s+)?(?:(?:taking|take) care|(?:being|be) (?:very )?careful"
    r"|(?:making|make) sure"
    rf"|careful|without|so as)\s+(?:not to\s+|that\s+)?(?:let\s+)?(?:(?:the\s+)?{CHAIN}\s+)?"
    r"(?:(?:be|becomes?|is not|are not|does not|do not)\s+)?twist(?:ing|ed)?"
    rf"(?:\s+(?:the\s+)?{CHAIN})?\b",
    re.IGNORECASE,
)


def without_care(text: str) -> str:
    """The text with such words blank."""
    return CARE.sub(lambda found: re.sub(r"\S", " ", found.group()), text)
