"""Lists in quotes that are repeated, '"sc, inc" around', "'hdc, ch 1' across": the quotes are read
as the brackets they stand for; length kept.
"""

from __future__ import annotations

import re

_STITCH = (
    r"(?:\d?(?:sc|hdc|dc|tr|htr|inc|dec|ch|sk)\d?|single|double|half|treble|increase|decrease)"
)
_REPEATED = (
    r"(?=[ ]*,?[ ]*(?:(?:all )?(?:a?round|across)\b|x[ ]?\d|\*[ ]?\d|\d+[ ](?:more )?times"
    r"|twice\b|(?:and )?repeat\b|rep\b|to (?:the )?(?:end|last)\b|until\b))"
)
QUOTED = re.compile(
    rf"(?P<q>[\"'])(?P<list>(?=[^\"'\n]*\b{_STITCH}\b)[^\"'\n]{{4,160}}?)(?P=q){_REPEATED}",
    re.IGNORECASE,
)
LEFT_OPEN = re.compile(
    rf"(?P<list>^[^\"'\n]*\b{_STITCH}\b[^\"'\n]*[a-z\d])(?<!every \d)(?<!each \d)\"{_REPEATED}",
    re.IGNORECASE | re.MULTILINE,
)
"""Only the closing one stands; behind "every 1" it is an inch."""


def with_brackets(text: str) -> str:
    """The text with such quotes as brackets; any text goes in."""
    if '"' not in text and "'" not in text:
        return text
    text = QUOTED.sub(lambda found: f"({found['list']})", text)
    return LEFT_OPEN.sub(lambda found: found["list"] + ",", text)
