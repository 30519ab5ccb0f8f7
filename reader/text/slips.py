"""Clean text of a crochet pattern -> the same text, length kept, with the bare "slip" of English
books as the slip stitch that it is: "and slip on first double", "slip to centre of loop".
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

SLIP = Sought(
    ("slip",),
    r"\bslip(?=\s+(?:in|on|to|into|upon|along|over|across|up|back|down|under)\b"
    r"(?!\s+(?:place|position|(?:an?|the|your) (?:\w+ )?(?:holder|marker|needle|pin|hook))\b))",
    re.IGNORECASE,
)
"""In front of a place; what goes on a holder or into place is no stitch."""


UP_THE_SIDE = Sought(
    ("slip",),
    r"\bslip(?:\sst(?:itch)?)?\s(?:back\s|up\s|along\s|over\s|down\s)+(?:the\s)?(?:side|edge)"
    r"(?:\sof\s(?:the\s)?(?:last|first|1st|end)\s[a-z]{1,7})?(?=\.?\s*[,;.]|\s\d)|\bslip\sas\sbefore\b",
    re.IGNORECASE,
)
"""How the thread comes to the height of the next row: nothing is left of it."""


def slips_named(text: str) -> str:
    """The text with those slips as "slst", and without those up the side to where a row begins."""
    text = UP_THE_SIDE.sub(lambda found: " " * len(found.group()), text)
    return SLIP.sub(lambda found: "Slst" if found.group()[0] == "S" else "slst", text)
