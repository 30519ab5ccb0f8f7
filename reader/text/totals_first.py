"""Text whose rows have their totals in the label, "row 2 (20): kfb every st" -> the same text,
length kept, with each behind its row: "row 2: kfb every st (20)".
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
    if CAST_ON.fullmatch(found["words"]):
        number = re.sub(r"\D", "", found["total"])
        return f"cast on {number} sts".ljust(len(whole))
    words = found["words"].rstrip(" .")
    said = f"{found['label']}:{words} {found['total']}"
    return said.ljust(len(whole)) if len(said) <= len(whole) else whole
