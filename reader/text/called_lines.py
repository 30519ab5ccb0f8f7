"""Rows that a pattern calls lines, courses or laps, "line 1   k2, yo" -> "row 1:  k2, yo"; length
kept. They must be several, numbered upwards from one, and nothing may be called a row beside them.
"""

from __future__ import annotations

import re
from itertools import pairwise

LINE = re.compile(
    r"^(?P<before>[ \t*>-]*)(?P<word>lines?|courses?|laps?|circuits?|passes|pass)(?P<gap>[ ]?)"
    r"(?P<n>\d{1,3})(?P<to>(?:[ ]?(?:-|—|to|and|&)[ ]?\d{1,3})?)"
    r"(?P<mark>[ ]?[:.)=—-]|[ ](?=[ ]*\S))",
    re.IGNORECASE | re.MULTILINE,
)
ROWS = re.compile(r"^[ \t*>-]*(?:rows?|rnds?|rounds?)\b[ ]?\d", re.IGNORECASE | re.MULTILINE)
LEAST = 3
"""Lines that must be labelled so."""
IN_ROUNDS = ("lap", "cir")
EVERY = re.compile(
    r"\b(?P<which>(?:every|each|all)(?: even| odd| other| second| alternate| following)?) "
    r"(?P<word>lines?|courses?|laps?)\b",
    re.IGNORECASE,
)


def rows_called_lines(text: str) -> str:
    """The text with such labels as those of rows; any text goes in."""
    found = list(LINE.finditer(text))
    numbers = [int(one["n"]) for one in found]
    rising = numbers[:1] == [1] and len(found) >= LEAST
    if not rising or sum(a >= b for a, b in pairwise(numbers)) > 2:
        return text
    if ROWS.search(text):
        return text
    return EVERY.sub(_every, LINE.sub(_as_row, text))


def _as_row(found: re.Match[str]) -> str:
    word = "rnd" if found["word"].lower().startswith(IN_ROUNDS) else "row"
    said = f"{found['before']}{word} {found['n']}{found['to']}:"
    whole = found.group()
    return said.ljust(len(whole)) if len(said) <= len(whole) else whole


def _every(found: re.Match[str]) -> str:
    word = "rnd" if found["word"].lower().startswith(IN_ROUNDS) else "row"
    word += "s" if found["word"].endswith("s") else ""
    return f"{found['which']} {word}".ljust(len(found.group()))
