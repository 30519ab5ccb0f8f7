"""Knitting text -> the same text, length kept, with a space for the dash of old books between two
sentences, "knit two plain rows in grey;--then divide them"; behind a heading or a label it stays.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

DASH = Sought(
    ("--", "—"),
    r"(?<=[a-z][.;])(?P<dash>--|—)"
    r"(?=[A-Za-z])(?!repeat\s*(?:[.;,(]|$|from\b|this\b|all\b|to\b))",
    re.IGNORECASE,
)
BEGUN = re.compile(r"[.:—]|--|\n[ \t]*\n")
LEAST = 5
"""Words of a sentence before such a dash; fewer are a heading, or a label."""


def undashed(text: str) -> str:
    """The text without them; any text goes in."""
    return DASH.sub(_space, text)


def _space(found: re.Match[str]) -> str:
    before = found.string[: found.start() - 1]
    before = before[max(0, len(before) - 200) :]
    sentence = BEGUN.split(before)[-1]
    return " " * len(found.group()) if len(sentence.split()) >= LEAST else found.group()
