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


OVER_CHAIN = Sought(
    ("sl",),
    r"\b(?P<way>(?:sl(?:ip)?\.?\s?st(?:itch)?|slip)\s(?:across|along|over|up|in\seach|into?\seach)"
    r"\s[^,;.()*]{2,34}?)(?P<chain>,?\s(?:(?:and|then)\s)?(?:over\s|across\s|up\s|along\s)?"
    r"(?:the\s)?ch(?:ain)?[ -]?\d{1,2})(?=,?\s(?:and\s|then\s)?(?:in)?to\s(?:the\s)?"
    r"(?:cent(?:er|re)|middle|next|\d(?:st|nd|rd|th)|top)\b)",
    re.IGNORECASE,
)
"""A chain of the row below that the slip stitches go along: "sl st across next 5 sc, then ch 4 and
to the center of next loop".
"""


def slips_named(text: str) -> str:
    """The text with those slips as "slst", without those up the side to where a row begins, and
    without the chains that they only go along.
    """
    text = OVER_CHAIN.sub(lambda found: found["way"] + " " * len(found["chain"]), text)
    text = UP_THE_SIDE.sub(lambda found: " " * len(found.group()), text)
    return SLIP.sub(lambda found: "Slst" if found.group()[0] == "S" else "slst", text)
