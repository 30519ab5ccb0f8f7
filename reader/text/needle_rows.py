"""Old lace whose rows are called needles: "1st needle--" reads as "1st row   --", length kept."""

from __future__ import annotations

import re

LABEL = re.compile(r"^[^\w\n]*(\d+)(?:st|nd|rd|th)\s+needle\b\s*(?:[.:—-])", re.MULTILINE)
NEEDLE = re.compile(
    r"(?<=\d(?:st|nd|rd|th)\s)needles?\b|(?<=\bfirst\s)needle\b|(?<=\blast\s)needle\b",
    re.IGNORECASE,
)
MOST_NEEDLES = 5
"""A set has no more; a higher number is that of a row."""


def needles_as_rows(text: str) -> str:
    """The text with "needle" put as "row" where its lines are labelled by more needles than a set
    has.
    """
    highest = max((int(found.group(1)[:4]) for found in LABEL.finditer(text)), default=0)
    if highest <= MOST_NEEDLES:
        return text
    return NEEDLE.sub(lambda m: "row".rjust(len(m.group())), text)
