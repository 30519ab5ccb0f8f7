"""The marks of footnotes, "to the end.[3]", turned to spaces where the text has the footnote: they
are no totals.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

NOTE = Sought(
    ("footnote",), r"^\s*\[?footnotes?\s(?P<sign>\w{1,3})\s?[:.]", re.IGNORECASE | re.MULTILINE
)


def without_marks(text: str) -> str:
    """The text without such marks; length kept."""
    if not NOTE.may_stand(text):
        return text
    for sign in {found["sign"] for found in NOTE.finditer(text)}:
        mark = re.compile(rf"\[{re.escape(sign)}\]|\({re.escape(sign)}\)(?=\s*(?:\n|$))")
        text = mark.sub(lambda found: " " * len(found.group()), text)
    return text
