"""Text whose lines end with their totals in a column of their own, behind wide blanks or a row of
dots, -> the same text, length kept, with "=" before each, and every such line a sentence.
"""

from __future__ import annotations

import re

LINE = re.compile(
    r"^(?P<words>[ \t]*\S(?:[^\n ]|[ ](?![ ]{2})|[ ]{3,6}(?=[A-Za-z*(\[]))*?)"
    r"(?P<gap>[ ]?\.{4,}[ ]?|[ ]{4,})(?P<n>\d{1,4})(?P<unit>(?:[ ]?(?:sts?|stitches))?)[ ]*$",
    re.MULTILINE,
)
COLUMN = re.compile(r"[. ]{4,5}\d")
"""What stands before every such total."""
LEAST = 4
"""Lines with such an end, and more than half of those that are not empty."""
WORKS = re.compile(r"\b(?:k|p|knit|purl|k\d|p\d|cast|co|rib|st|sts|rows?|rounds?|sc|dc|yo)\b", re.I)


def totals_told(text: str) -> str:
    """The text so put; any text goes in."""
    if COLUMN.search(text) is None:
        return text
    found = [one for one in LINE.finditer(text) if WORKS.search(one["words"])]
    if len(found) < LEAST:
        return text
    first, last = found[0].start(), found[-1].end()
    lines = [one for one in text[first:last].split("\n") if one.strip()]
    if 2 * len(found) <= len(lines):
        return text
    return text[:first] + LINE.sub(_told, text[first:last]) + text[last:]


def _told(found: re.Match[str]) -> str:
    gap = " = ".rjust(len(found["gap"]))
    return f"{found['words']}{gap}{found['n']}{found['unit']}".ljust(len(found.group()))
