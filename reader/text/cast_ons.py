"""Clean text -> the same text, length kept, with a cast on as most write it: "cast-on 31", "Caston
31", "C.O. 31", "c/o 31", "Begin by casting on 31" and "Cast on: 31" read as "cast on 31"; how it is
done, "(knitted cast on)", turned to spaces.
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED
from reader.text.sought import Sought

_NUMBER = rf"(?=(?:\d|(?:{SPELLED})\b))"
WRITTEN = Sought(
    ("caston", "cast on", "cast-on", "casting", "o.", "c/o", "set on", "throw on", "loop on",
     "lay on", "put up"),
    r"\b(?:(?P<word>(?:(?:begin|start)(?:ning|ing)? (?:by|with) casting|cast)[ -]?on\b)"
    r"(?:\s*[:=—-])?"
    rf"|c\.\s?o\.|c/o|\b(?:set|throw|loop|lay) on\b|\bput up\b)(?:\s+a total of)?\s+{_NUMBER}",
    re.IGNORECASE,
)
BOUND = Sought(
    ("b.", "b/o"),
    rf"\b(?:b\.\s?o\.|b/o)(?=\s+(?:next |first |all |in |rem))|\b(?:b\.\s?o\.|b/o)\s+{_NUMBER}",
    re.IGNORECASE,
)
"""Stitches bound off, by their letters."""
RAISED = Sought(
    ("rais",),
    r"\brais(?:e|ing)(?=\s+(?!1\b|one\b|a\b)"
    rf"(?:\d+|{SPELLED})\s+(?:stitches|sts|loops)\b)",
    re.IGNORECASE,
)
"""Stitches taken up from an edge, in old books, to begin a piece."""
MANNER = Sought(
    ("caston", "cast on", "cast-on"),
    r"(?<=sts|.es)\.?\s*\((?![^()]*\d)(?:[^()]{0,60} )?cast[ -]?on\b[^()]{0,60}\)", re.IGNORECASE
)
"""In which way, behind the number: "CO 31 sts (knitted cast on)"."""


COLOUR_FIRST = Sought(
    ("cast on ", "cast-on "),
    r"(?P<cast>\bcast[ -]on )(?:with|in|using) (?:the )?[a-z]{3,12}(?: [A-Z])? "
    r"(?=\d{1,4} (?:sts?|stitches)\b)",
    re.IGNORECASE,
)
"""What is cast on with, before how many: "cast on with grey 108 sts"."""


def cast_ons(text: str) -> str:
    """The text with such words put right; any text goes in, its length stays."""
    text = COLOUR_FIRST.sub(lambda found: found["cast"].ljust(len(found.group())), text)
    text = RAISED.sub(lambda found: "co".ljust(len(found.group())), text)
    text = BOUND.sub(lambda found: "bo".ljust(len(found.group())), text)
    return MANNER.sub(_spaces, WRITTEN.sub(_usual, text))


def _usual(found: re.Match[str]) -> str:
    told = "cast on" if found["word"] and len(found["word"]) > len("caston") else "co"
    told = told.capitalize() if found.group()[0].isupper() else told
    return told.ljust(len(found.group()))


def _spaces(found: re.Match[str]) -> str:
    return " " * len(found.group())
