"""Numbers of rows as some authors write them -> in figures, with "-" between the first and the
last, length kept: "ROUND IV--" -> "ROUND 4 --", "R6...R10" -> "R6-   10".
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

_WORD = r"(?:rounds?|rnds?|rds?|rows?)"
_ROMAN = r"(?:X{0,3}(?:IX|IV|V?I{0,3})(?<=[IVX])|x{0,3}(?:ix|iv|v?i{0,3})(?<=[ivx]))"
ROMAN = re.compile(
    rf"(?:^[ \t]*|(?<=[.;)] ))(?i:{_WORD})\.? (?P<first>{_ROMAN})\b"
    rf"(?P<more>(?: ?(?:to|and|-|through|&|,) ?{_ROMAN}\b)*)(?P<end>[ \t]?[:.—)(-])",
    re.MULTILINE,
)
FIGURES = re.compile(rf"{_ROMAN}\b(?P<room>[ -]?)")
VALUES = {"I": 1, "V": 5, "X": 10}
LEAST = 3
"""Labels in Roman figures that make a list of rows; one may be a part's."""
RANGE = Sought(
    ("..", "~", "→", "to", "until", "till", "th", "/", ">", "-", "—"),
    rf"^(?P<label>[ \t]*(?:{_WORD}|R)\.? ?\d{{1,3}})"
    r"(?:(?P<to> ?(?:\.{2,3}|~|→|->|=>|-?thru-?|/) ?| (?:up to|through to|until|till) )"
    rf"(?P<word>(?:{_WORD}|R)\.? ?)?| ?(?:-|—|to|thru|through) ?(?:{_WORD}|R)\.? ?)"
    r"(?=\d{1,3} ?[:.)=—-])",
    re.IGNORECASE | re.MULTILINE,
)


def rows_in_figures(text: str) -> str:
    """The text with such labels as usual ones; any other text as it is."""
    if len(list(ROMAN.finditer(text))) >= LEAST:
        text = ROMAN.sub(_roman, text)
    return RANGE.sub(_range, text)


def _roman(found: re.Match[str]) -> str:
    label = found.group()
    begins = found.start("first") - found.start()
    return label[:begins] + FIGURES.sub(_figure, label[begins:])


def _figure(found: re.Match[str]) -> str:
    said = found.group()
    total, last = 0, 0
    for letter in reversed(said.rstrip(" -")):
        value = VALUES[letter.upper()]
        total, last = total + (value if value >= last else -value), max(value, last)
    figures = str(total)
    rest = found["room"]
    if len(figures) > len(said) - len(rest):
        rest = ""
    return (figures + rest).ljust(len(said)) if len(figures + rest) <= len(said) else said


def _range(found: re.Match[str]) -> str:
    between = found.group()[len(found["label"]) :]
    listed = "/" in between and found["word"] is not None
    return found["label"] + ("&" if listed else "-").ljust(len(between))
