"""Knitting text -> the same text, length kept, with how far a row's work goes told by what is left
at its end: "purl all but five", "knit all the stitches except the last 5" as "purl to last 5".
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED, word_number
from reader.text.sought import Sought

ALL_BUT = Sought(
    ("but", "cept", "save"),
    r"(?P<verb>\b(?:knit|purl|pearl|seam|rib|work|k\.?|p\.?)(?:\s+plain)?)\s+"
    r"(?:all|every\s+one|every\s+(?:stitch|st)|(?:all\s+)?the\s+(?:whole|rest|remainder|row"
    r"|stitches|sts|others?))(?:\s+(?:the\s+)?(?:stitches|sts|row|rest|remainder|others))?,?\s+"
    r"(?:but|except(?:ing)?|save)(?:\s+for)?\s+(?:the\s+)?(?:last\s+|end\s+)?"
    rf"(?P<n>\d{{1,2}}|{SPELLED})(?:\s+(?:stitches|sts|stitch|st|last|loops))?"
    r"(?=\s*(?:[,;:.]|(?:and|then|which|these|those)\b))",
    re.IGNORECASE,
)
THESE = Sought(
    ("to last ",),
    rf"(?P<lead>\bto last (?P<n>\d{{1,2}})\s*[,;]?\s*(?:and\s+)?(?:then\s+)?(?:knit|purl|pearl)\s+)"
    rf"(?P<those>the\s+(?:\d{{1,2}}|{SPELLED})|these(?:\s+(?:\d{{1,2}}|{SPELLED}))?|those|them)"
    r"(?=\s*(?:plain\s*)?[,;:.])",
    re.IGNORECASE,
)
"""What is done with them, told behind."""


def all_but_told(text: str) -> str:
    """The text so put; any text goes in."""
    text = ALL_BUT.sub(_to_last, text)
    return THESE.sub(lambda found: found["lead"] + found["n"].ljust(len(found["those"])), text)


def _to_last(found: re.Match[str]) -> str:
    number = int(found["n"]) if found["n"].isdigit() else word_number(found["n"]) or 0
    return f"{found['verb']} to last {number}".ljust(len(found.group()))
