"""Clean text -> the same text, length kept, without the advice not to shape where the row before
was shaped: "dec 6 sts evenly spaced, do not work dec directly over previous dec". No stitch of it.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

SHAPING = r"(?:inc|dec)(?:s|'s|reas\w+)?\.?"
NOT_ABOVE = Sought(
    ("over", "above", "below", "on top of", "in line with"),
    r"(?:[,;]\s*|\(\s*|\b)(?:(?:and|but|always|being careful|taking care|take care|be careful|"
    r"making sure|so as)\s+){0,3}"
    r"(?:do not|don't|not to|never|without|avoid|try not to|not|having no|with no)\s+"
    r"(?:(?:to\s+)?(?:work|plac|mak|hav|put|bring|com|fall)\w*\s+)?"
    r"(?:(?:the|any|an|a|your|one|new)\s+){0,2}"
    rf"(?:{SHAPING}(?:\s+(?:sts?|stitch(?:es)?))?\s+)?(?:(?:come|fall|lie|be)(?:s|ing)?\s+)?"
    r"(?:(?:directly|exactly|right|immediately|just)\s+)?"
    r"(?:over|above|below|on top of|in line with)\s+"
    r"(?:(?:(?:the|those|that|any|a|an|one|other|of|in|previous|last|preceding|former|earlier)"
    rf"\s+){{0,3}}{SHAPING}|(?:each|one)\s+(?:an)?other\b|another\b"
    r"|those\s+(?:of|in)\s+(?:the\s+)?(?:last|previous|preceding)\b)"
    r"(?:\s+(?:inc|dec|reas|sts?|stitch|ones?|row|rnd|round|of|the|in|last|previous|preceding|made|"
    r"below|before|worked|that|were|was|previously|each|other)(?:\w*\b'?s?\.?(?=\s|[,;.()]|$)))*"
    r"(?:\s*\))?",
    re.IGNORECASE,
)
"""What is said of where a change of the row shall not lie."""


def without_advice(text: str) -> str:
    """The text with such advice blank."""
    return NOT_ABOVE.sub(lambda found: _kept_end(found.group()), text)


def _kept_end(words: str) -> str:
    """Blanks of the same length, before the full stop where the advice took it with it."""
    stop = "." if words.endswith(".") else ""
    lines = "".join("\n" if one == "\n" else " " for one in words[: len(words) - len(stop)])
    return lines + stop
