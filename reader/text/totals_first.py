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


def with_cast_on(text: str) -> str:
    """The text with that number. The other rows keep their totals, which are read in the label, and
    so their words keep their place; any text goes in.
    """
    found = list(LABELLED.finditer(text))
    if len(found) < LEAST or any(BEHIND.search(one["words"]) for one in found):
        return text
    out = list(text)
    for one in found:
        if CAST_ON.fullmatch(one["words"]):
            number = re.sub(r"\D", "", one["total"])
            out[one.start() : one.end()] = f"cast on {number} sts".ljust(len(one.group()))
            break
    return "".join(out)
