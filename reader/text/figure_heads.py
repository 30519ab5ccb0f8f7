"""Headings with the number of their picture, "STAR WITH RAYS (fig. 12).--Begin with ...": a colon
for the bracket and the dash; length kept.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

HEAD = Sought(
    ("fig", "illus", "plate"),
    r"^(?P<lead>[ \t]*(?P<head>[A-Z][A-Za-z' -]{2,37}))"
    r"(?P<shown>\s*\((?:figs?|illus(?:tration)?s?|plate)"
    r"\.?\s?(?:no\.?\s?)?\d+[^()\n]{0,20}\)\s?[.:]?\s?(?:--|—|–|(?<=:))\s?)(?=\S)",
    re.IGNORECASE | re.MULTILINE,
)


def without_figures(text: str) -> str:
    """The text with such headings; a sentence that speaks of a picture stays as it is."""
    return HEAD.sub(_headed, text)


def _headed(found: re.Match[str]) -> str:
    if not found["head"][:1].isupper():
        return found.group()
    return found["lead"] + ":".ljust(len(found["shown"]))
