"""Clean text -> the same text, length kept, with round brackets for the angled ones behind a row's
label, "Row 11 <P>: ..." -> "Row 11 (P): ...".
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

_ROW = r"(?:rows?|rnds?|rounds?|rds?)"
BEHIND_LABEL = Sought(
    ("<", "‹", "«"),
    rf"(?P<label>^[ \t]*(?:{_ROW}|R)?[ .#]{{0,2}}\d{{1,3}}(?:st|nd|rd|th)?[^\n:<‹«]{{0,20}}?)"
    r"[<‹«](?P<what>[A-Za-z][A-Za-z .,/+&-]{0,24})[>›»](?=\s?[:.)—-])",
    re.IGNORECASE | re.MULTILINE,
)


def without_angles(text: str) -> str:
    """The text so put; any text goes in."""
    return BEHIND_LABEL.sub(r"\g<label>(\g<what>)", text)
