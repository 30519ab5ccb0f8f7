"""Clean text -> the same text, length kept, with a full stop for the colon behind rows worked even,
where what follows is the next thing to do, "Work 3 rounds even: Repeat last 4 rounds once", or how
many stitches there are, "Continue in sc for 3 rounds: 24 sc".
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

THEN = Sought(
    tuple(f"{end}{gap}:" for gap in ("", " ") for end in
          ("even", "plain", "straight", "shaping", "increasing", "decreasing")),
    r"(?P<rows>\b(?:work|knit|k|crochet)\s+(?:\w+\s+){1,2}?(?:rows?|rnds?|rounds?)\s+"
    r"(?:even|plain|straight|without\s+(?:shaping|increasing|decreasing))) ?:"
    r"(?=\s+(?:then\b|rep(?:eat)?\b|next\b|\d+(?:st|nd|rd|th)\b|work\b|continue\b|fasten\b|break\b))",
    re.IGNORECASE,
)

SO_MANY = Sought(
    ("work", "cont", "rep", "inc", "dec"),
    r"(?P<rows>^[ ]*(?:work|continue|cont|repeat|rep|inc|dec|increase|decrease)\b"
    r"[^.:;()\n]{4,80}?) ?:"
    r"(?=\s+\d+(?:\s*[(\[{<][\d,:;/ -]+[)\]}>]|(?:[/-]\d+)+)?"
    r"\s*(?:sts?|stitches|s ?c|h ?d ?c|d ?c|h?tr)\b[^\n]{0,20}$)",
    re.IGNORECASE | re.MULTILINE,
)
"""Rows told without a label, and their total behind a colon: no heading."""


def stopped(text: str) -> str:
    """The text with such a colon as the full stop that it is."""
    for one in (THEN, SO_MANY):
        text = one.sub(lambda found: (found["rows"] + ".").ljust(len(found.group())), text)
    return text
