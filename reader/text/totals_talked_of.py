"""Totals that a row ends with in whatever talk: ", which leaves you twenty-two", ", so 22 are
left", "- down to 22 again" -> ", (22)"; length kept.

Such a clause is known by its words and not by its form: one number, and beside it nothing but words
that people use when they count what they have.
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED, number_said
from reader.text.fitting import fitted
from reader.text.sought import has_any

TELLS = frozenset(
    ["have", "has", "leaves", "leave", "leaving", "left", "makes", "make", "making", "gives",
     "give", "giving", "remain", "remains", "remaining", "rem", "total", "altogether", "down",
     "brings", "bringing", "takes", "taking", "gets", "get", "count", "are", "is", "be", "equals",
     "now", "comes", "for"]
)  # fmt: skip
"""One of these at least says that the number is what there is."""
TALK = TELLS | frozenset(
    ["you", "you'll", "you've", "your", "we", "we'll", "us", "i", "me", "will", "should", "would",
     "must", "with", "at", "to", "up", "back", "on", "the", "a", "of", "in", "all", "that",
     "that's", "that'll", "which", "this", "it", "there", "there's", "so", "and", "still",
     "again", "got", "needle", "needles", "hook", "just", "only", "exactly", "once", "more"]
)  # fmt: skip
"""Words that count and do not work."""
_WORD = r"[a-z]+(?:['’][a-z]+)?"
PIECES = (*TELLS, "for")
TALKED_OF = re.compile(
    r"(?P<gap>(?<=[\w)\]*])(?:[,;:—–]| [—–-](?= )|\.(?= )"
    r"| (?=(?:so|which|and (?:that|you|we|so|now|it|this))\b)) ?)"
    rf"(?P<said>(?:{_WORD},? ){{0,9}})(?P<n>\d{{1,4}}|{SPELLED})"
    rf"(?: (?P<unit>sts?|stitches))?(?P<behind>(?:,? {_WORD}){{0,5}})(?P<end>[.!]*[ ]*)$",
    re.IGNORECASE | re.MULTILINE,
)
WORKS_ON = re.compile(r"\b(?:once more|more|to (?:the )?end)\b|\bto all\b")
LEAST = 5
"""Stitches: a smaller number may be of something else."""


def talked_of_totals(text: str) -> str:
    """The text so put; any text goes in."""
    return TALKED_OF.sub(_bracketed, text) if has_any(text, PIECES) else text


def _bracketed(found: re.Match[str]) -> str:
    whole = found.group()
    talk = f"{found['said']} {found['behind']}".lower().replace("’", "'").replace(",", " ")
    words = set(talk.split())
    number = number_said(found["n"])
    if not words <= TALK or not words & TELLS or number < LEAST or WORKS_ON.search(talk):
        return whole
    gap = found["gap"].strip()
    if not found["said"] and found.string[: found.start()].rstrip()[-1:].isdigit():
        # "42 - 50 - 58 sts rem": a number of each of several sizes.
        return whole
    if "for" in words and not words & (TELLS - {"for"}) and gap in ("", "."):
        return whole
    return fitted(f"{gap} ({number})", whole)
