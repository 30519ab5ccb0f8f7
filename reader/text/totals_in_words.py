"""Text -> the same text, length kept, with a total told by a number word alone at its row's end in
figures: "Round two. Two in each stitch. Thirty-two." -> "... (32)".
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED, word_number
from reader.text.sought import has_any

_BEFORE = (
    r"(?:(?:now|still|so|again|back to|that's|that is|that makes|it makes|which makes|you have"
    r"|you should have|there are|making)[ ])?"
)
PIECES = ("row", "rnd", "round", *(f"r{figure}" for figure in range(10)))
ENDED = re.compile(
    r"^(?P<row>[ \t]*(?:(?:rows?|rnds?|rounds?)[ ]?(?:\d+|[a-z-]+)|r\d{1,3})[ ]?[:.)–—-][^\n]{6,}?"
    r"[.;:!)–—-][ ]+)"
    rf"(?P<total>\(?{_BEFORE}(?P<n>{SPELLED})(?P<behind>\)|(?:[ ](?:now|again|in all|altogether"
    r"|stitches|sts))*,?(?:[ ]if[ ][a-z ]{4,30})?)[.!]?)(?P<end>[ \t]*)$",
    re.IGNORECASE | re.MULTILINE,
)
LEAST = 4
"""Smaller numbers at a row's end tell how often something is done."""


def totals_in_words(text: str) -> str:
    """The text so put; any text goes in."""
    return ENDED.sub(_in_figures, text) if has_any(text, PIECES) else text


def _in_figures(found: re.Match[str]) -> str:
    number = word_number(found["n"])
    if number is None or number < LEAST or (found["total"][0] == "(") != (found["behind"] == ")"):
        return found.group()
    return found["row"] + f"({number})".ljust(len(found["total"])) + found["end"]
