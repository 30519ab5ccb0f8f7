"""Clean text -> the same text, length kept, with the rows of a table as labelled lines:
"3 | sc, inc x3 | 9" -> "3 : sc, inc x3 = 9".
"""

from __future__ import annotations

import re

ROW = re.compile(
    r"^(?P<lead>[ \t]*\|?[ \t]*)(?P<label>(?:(?:rnd|rd|row|round|r)\.?\s*)?\d+(?:\s*(?:-|to"
    r"|&)\s*(?:rnd|rd|row|round|r)?\.?\s*\d+)?)"
    r"(?P<first>[ \t]*\|)(?P<words>[^\n]*?)(?:(?P<last>\|)(?P<total>[ \t]*\(?\d+\)?[^|\n]*))?"
    r"(?P<end>\|?[ \t]*)$",
    re.IGNORECASE | re.MULTILINE,
)
HEAD = re.compile(r"^[ \t]*\|?[ \t]*(?:rnd|row|round|rd)s?\b[^|\n\d]*\|[^\n]*$", re.I | re.M)
RULE = re.compile(r"^[ \t]*\|?[ \t:-]*-{3}[-|: \t]*$", re.MULTILINE)


CELLS = re.compile(
    r"^(?P<piece>[^;\n]{0,24}?)(?P<parts>;[ \t]*)(?P<label>\d{1,3}[ \t]*);(?P<words>[^;\n]*);"
    r"(?P<total>[ \t]*\d*[ \t]*)$",
    re.MULTILINE,
)
"""A line of cells parted by semicolons: the piece, the row, its words, its total."""
CELLS_LEAST = 4


def _cells(text: str) -> str:
    """The text with such lines as rows of a table, where it has several."""
    if text.count(";") < 3 * CELLS_LEAST or len(CELLS.findall(text)) < CELLS_LEAST:
        return text
    return CELLS.sub(
        lambda m: " " * (len(m["piece"] + m["parts"]) - 1)
        + f"{m['label']} |{m['words']}|{m['total']}",
        text,
    )


def untabled(text: str) -> str:
    """The text with its table rows told as lines; other text as it is."""
    text = _cells(text)
    if "|" not in text:
        return text
    text = HEAD.sub(lambda m: m.group().replace("|", " "), text)
    text = RULE.sub(lambda m: " " * len(m.group()), text)
    return ROW.sub(_line, text)


def _line(row: re.Match[str]) -> str:
    first = ":".ljust(len(row["first"]))
    words, total = row["words"].replace("|", " "), (row["total"] or "").replace("|", " ")
    last = "=" if row["last"] else ""
    return row["lead"].replace("|", " ") + row["label"] + first + words + last + total + (
        row["end"].replace("|", " ")
    )
