"""What may stand behind a row's label: its side, "(RS)", "WS", and more marks than one."""

from __future__ import annotations

import re

WORKED = r"(?:ch|sl st|ss|sc|s c|hdc|dc|d c|tr|tr c|htr|k|p|yo|inc|dec|sk|skip|miss|knit|purl)"
_SIDE_SAID = r"(?:RS|WS|right side|wrong side)(?:\s+(?:facing|row|side|of work))?"
SIDE = (
    r"(?:\s*[\(\[](?:(?:RS|WS)(?: row)?,?\s*)?(?:inc|dec|increase|decrease)(?:\s+(?:row|round"
    r"|rnd|rd))?[\)\]]"
    rf"|\s*[\(\[](?![^)\]]{{0,40}}\b\d* ?{WORKED}\b)[^)\]]{{0,40}}[\)\]]"
    rf"|(?:,?\s+|\s?[/-]\s?){_SIDE_SAID}"
    rf"(?=\s*[:.—]|\s+-+\s|\s+(?:[*(\[]|\d* ?{WORKED}\b|[kp]\d)))?"
)
"""Behind a label, words in brackets that work nothing, or the side: "(right side)", "RS"."""
SIDE_ENDS = (
    r"(?:(?<=\b[RW]S)|(?<=\bside)|(?<=\bfacing))"
    rf"(?=\s+(?:[*(\[]|\d* ?{WORKED}\b|[kp]\d))"
)
"""Behind the side no mark is needed: "Row 1 WS k2, p2"."""
SIDE_ALONE = re.compile(r"(?:RS|WS)\s?:\s+(?!(?:the )?(?:[Rr]ight|[Ww]rong|[Pp]ublic)\b)")
"""At a line's start the side may be all that a row is labelled by."""
_MARK = r"(?:[:.;,)\]—=~>→-]|\.{2,3})"
MORE = re.compile(
    rf"(?:\s*(?:{_MARK}+|[(\[]{_SIDE_SAID}[)\]]|{_SIDE_SAID}(?=\s*{_MARK}|\s+(?:[*(\[]|[a-z\d]))))+"
    r"(?=\s+[A-Za-z(*\[\d]|[*(\[])",
    re.IGNORECASE,
)
"""What else may part a row's words from its label: more marks than one, and the side."""


def side_of(words: str) -> str:
    """ "right" or "wrong" where words tell the side, else ""."""
    low = words.lower()
    if re.search(r"\bws\b|wrong", low):
        return "wrong"
    return "right" if re.search(r"\brs\b|right", low) else ""


def past_marks(text: str, end: int) -> tuple[int, str]:
    """Where a row's words begin, behind all that parts them from its label that ends there; and
    the side that is told between them.
    """
    more = MORE.match(text, end)
    return (more.end(), side_of(more.group())) if more else (end, "")
