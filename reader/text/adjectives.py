"""Words that tell how broad a stripe is, and not what is done: "ribs broad and narrow by turns",
"the narrow rib"; length kept.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

_STRIPE = (
    r"(?:ribs?|ribb(?:ing|on)|stripes?|bands?|borders?|edges?|edgings?|laces?|parts?"
    r"|strips?|insertions?|beadings?|pieces?|hems?|tapes?|braids?|width)"
)
NARROW = Sought(
    ("narrow",),
    rf"\bnarrow(?=\s+{_STRIPE}\b)|\bnarrow(?=\s+(?:and|or)\s+(?:a\s+)?(?:broad|wide)\b)"
    r"|(?:(?<=\bbroad and )|(?<=\bwide and )|(?<=\bthe )|(?<=\ba ))narrow\b"
    r"(?!\s+(?:row|round|rnd)\b)",
    re.IGNORECASE,
)


def without_adjectives(text: str) -> str:
    """The text with such a word as one that works nothing."""
    return NARROW.sub(lambda found: "thin  ", text)
