"""Text whose rows have their totals in the label -> the same text, length kept, with the number
that "row 0 (10): cast on" lacks: "cast on 10 sts".
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

LABELLED = Sought(
    ("):", "]:", "}:"),
    r"^(?P<label>[ \t>*-]*(?:rows?|rnds?|rounds?|r)[ .]?\d{1,3}(?:[ ]?[-—][ ]?(?:r)?\d{1,3})?)[ ]?"
    r"(?P<total>[(\[{]\d{1,4}(?:[ ]?(?:sts?|stitches))?[)\]}]):(?P<words>[^\n]*?)[ ]*$",
    re.IGNORECASE | re.MULTILINE,
)
LEAST = 3
"""Rows that must have them, and all that do have none behind."""
BEHIND = re.compile(r"[(\[{=]\s*\d{1,4}(?:[ ]?(?:sts?|stitches))?\s*[)\]}]?\.?$")
CAST_ON = re.compile(r"\s*cast[ -]?on\W*", re.IGNORECASE)


def totals_last(text: str) -> str:
    """The text so put; any text goes in."""
    found = list(LABELLED.finditer(text))
    if len(found) < LEAST or any(BEHIND.search(one["words"]) for one in found):
        return text
    return LABELLED.sub(_behind, text)


def _behind(found: re.Match[str]) -> str:
    whole = found.group()
    if not CAST_ON.fullmatch(found["words"]):
        # The label's total is read where it stands, and so the words keep their place too.
        return whole
    number = re.sub(r"\D", "", found["total"])
    return f"cast on {number} sts".ljust(len(whole))
