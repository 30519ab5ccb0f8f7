"""A number behind a bracket that ends a row, "[sc, inc] 3", says how often: told so, "[sc, inc]x3",
where it cannot be the row's total; length kept.

It cannot where it is less than the bracket makes once, or where the row's label brings its total;
once shown for one row, it holds for all of the text.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

BEHIND = Sought(
    (") ", "] "),
    r"^(?P<label>[^\n:]{0,24}[:.)][ ]+)?[^\n]*"
    r"[(\[](?P<body>(?=[^()\[\]\n]*[a-z])[^()\[\]\n]{3,60})[)\]]"
    r"(?P<gap>[ ])(?P<n>\d{1,2})(?P<end>[ ]*[.;]?[ ]*)$",
    re.MULTILINE | re.IGNORECASE,
)
LABEL_TOTAL = re.compile(r"\(\d{1,4}\)[:.][ ]+$")
PART = re.compile(r"\s*[,;]\s*|\s+and\s+")
NUMBER = re.compile(r"\d{1,3}(?!\s?(?:tog|together))")
DOUBLED = re.compile(r"\binc|\b2 \w+ in", re.IGNORECASE)


def _makes(body: str) -> int:
    """The fewest stitches that a bracket makes, worked once."""
    made = 0
    for part in PART.split(body):
        number = NUMBER.search(part)
        made += int(number.group()) if number else 1
        made += 1 if DOUBLED.search(part) and not number else 0
    return made


def _no_total(row: re.Match[str]) -> bool:
    told = LABEL_TOTAL.search(row["label"] or "") is not None
    return told or int(row["n"]) < _makes(row["body"])


def with_times_told(text: str) -> str:
    """The text with the sign before such numbers; any text goes in."""
    rows = list(BEHIND.finditer(text))
    if not any(_no_total(one) for one in rows):
        return text
    out = list(text)
    for one in rows:
        out[one.start("gap")] = "x"
    return "".join(out)
