"""Clean text -> the same text, length kept, where the last loops of stitches are kept on the hook
before they are told: "the last loop of each tr make 3 tr" -> "the last loop of each    make 3 tr".
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

OF_EACH = Sought(
    ("loop of each", "lp of each"),
    r"(?P<told>\blast (?:loop|lp) of each) (?P<name>(?:s ?c|h ?d ?c|d ?c|tr ?c?|dtr|st|stitch)\b)"
    r"(?=,? (?:make|work|\d))",
    re.IGNORECASE,
)
"""The stitch that is only named: it is worked where the next words say so."""


def unnamed_loops(text: str) -> str:
    """The text without those names."""
    return OF_EACH.sub(lambda found: f"{found['told']} {' ' * len(found['name'])}", text)
