"""A second way to begin, told beside the first, "6 sc in a magic ring (or ch 2, 6 sc in 2nd ch from
hook)", "Alternate way to begin: ...": it is not worked as well; length kept.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

_BEGINS = r"(?:ch(?:ain)?\.?[ ]?\d|hook|ring|loop|circle|\bMR\b)"
BRACKET = Sought(
    ("or", "alternat", "if you"),
    r"[(\[][ ]?(?:or\b|alternat(?:iv)?e(?:ly)?\b|if you (?:prefer|like|can'?t|cannot|don'?t))"
    rf"(?=[^()\[\]]{{0,60}}{_BEGINS})[^()\[\]]{{2,160}}[)\]]",
    re.IGNORECASE,
)
SENTENCE = Sought(
    ("alternat", "prefer", "if you"),
    r"(?<=\.)[ \t*•-]*(?:alternat(?:e|ive) (?:way|method|start|option|beginning)\b[^\n:]{0,30}:"
    r"|alternatively\b[,:]"
    r"|(?:or,? )?if you (?:prefer|can'?t|don'?t|do not|cannot|are not)\b[^\n.]{0,60}"
    rf"[,:])(?=[^\n.]{{0,80}}{_BEGINS})[^\n]*?(?=\.(?:\s|$)|\n|$)",
    re.IGNORECASE | re.MULTILINE,
)
AFTER_RING = Sought(
    (" or ", " or,", ",or ", ",or,"),
    r"(?P<ring>\b(?:(?:magic|adjustable|sliding) (?:ring|circle|loop)|MR|MC|AR)\b[^\n.;()]{0,30}?)"
    r"(?P<or>[ ,]+or,?[ ](?:you can |just |simply |start by )?(?:ch(?:ain)?\.?|make a ch(?:ain)?)"
    r"[ ]?(?:of )?[2-6]\b[^\n.;()]{0,60}?(?:hook|ring|first ch(?:ain)?|1st ch(?:ain)?))",
    re.IGNORECASE,
)
"""The second way in the same sentence: "6 sc in magic ring, or ch 2 and 6 sc in 2nd ch from hook".
"""


ABBREVIATED = Sought(("(rep", "(rpt"), r"(?<=\brepeat )\((?:rep|rpt)\.?\)", re.IGNORECASE)
"""Told once: "Repeat (rep) from *"."""


def without_other_ways(text: str) -> str:
    """The text without them; any text goes in."""
    text = ABBREVIATED.sub(lambda found: " " * len(found.group()), text)
    text = BRACKET.sub(lambda found: " " * len(found.group()), text)
    text = SENTENCE.sub(lambda found: " " * len(found.group()), text)
    return AFTER_RING.sub(lambda found: found["ring"].ljust(len(found.group())), text)
