"""Clean text -> the same text, length kept, with a full stop for the colon behind rows worked even,
where what follows is the next thing to do: "Work 3 rounds even: Repeat last 4 rounds once".
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


def stopped(text: str) -> str:
    """The text with such a colon as the full stop that it is."""
    return THEN.sub(lambda found: (found["rows"] + ".").ljust(len(found.group())), text)
