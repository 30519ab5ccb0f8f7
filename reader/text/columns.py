"""Clean text -> the same text, length kept, with the rows of a table set in columns as labelled
lines: "3      [1 sc, 2 sc in next] x 8         24" -> "3:     [1 sc, 2 sc in next] x 8       = 24".
"""

from __future__ import annotations

import re

HEAD = re.compile(
    r"^[ ]*(?:rnds?|rds?|rows?|rounds?|no\.?|#)[ ]{2,}[A-Za-z][^\n|\d]*$", re.I | re.MULTILINE
)
RULE = re.compile(r"^[ ]*[-=]{2,}(?:[ ]+[-=]{2,})+[ ]*$", re.MULTILINE)
"""The line below the heads of columns: "---   ------   ---"."""
ROW = re.compile(
    r"^(?P<label>[ ]*(?P<first>\d{1,3})(?:[ ]?-[ ]?\d{1,3})?)(?P<gap>[ ]{2,})(?P<words>\S[^\n]*?)"
    r"(?:[ ]{2}(?P<between>[ ]*)(?P<total>\d{1,4}))?[ ]*$",
    re.MULTILINE,
)
LEAST = 3
"""Rows of such a table."""


def without_columns(text: str) -> str:
    """The text with such a table told as lines, where its head or its rule shows it; other text as
    it is.
    """
    if not (HEAD.search(text) or RULE.search(text)) or len(ROW.findall(text)) < LEAST:
        return text
    for shape in (HEAD, RULE):
        text = shape.sub(lambda found: " " * len(found.group()), text)
    return ROW.sub(_line, text)


def _line(row: re.Match[str]) -> str:
    total = f" ={row['between']}{row['total']}" if row["total"] else ""
    told = f"{row['label']}:{row['gap'][1:]}{row['words']}{total}"
    return told.ljust(len(row.group()))
