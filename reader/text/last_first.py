"""Clean text -> the same text, length kept, with the number behind "last": "knit to 3 last sts" ->
"knit to last 3 sts", as people write who have another language.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

NUMBER_FIRST = Sought(
    (" last ",), r"\b(?P<to>to|till|until) (?P<n>\d{1,3}) last (?=sts?\b|stitch)", re.IGNORECASE
)


def last_first(text: str) -> str:
    """The text with such words put right; any text goes in."""
    return NUMBER_FIRST.sub(lambda found: f"{found['to']} last {found['n']} ", text)
