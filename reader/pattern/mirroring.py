"""Shaping told by the shaping before it, turned about: "Decrease same as you increased", "narrow in
the same way as you widened" -> Rule.
"""

from __future__ import annotations

import re

from reader.pattern.rule import Rule

MIRRORED = re.compile(
    r"(?:^|(?<=[.,;:] )|(?<=and )|(?<=then ))\W*(?:(?:and|then|now)\s+)*(?P<way>dec|narrow|inc"
    r"|widen)\w*\.?\s*"
    r"(?:(?:off|back|down|again|it|sts|stitches|each side|both sides|at both ends"
    r"|at each end)\s+){0,2}"
    r"(?:in\s+)?(?:just\s+|exactly\s+)?(?:the\s+)?"
    r"(?:same\s+(?:as|way|manner|rate|ratio|order)|as|like|way|to\s+correspond|to\s+match)\b"
    r"[^.;:\d]{0,24}\b(?P<back>dec|narrow|inc|widen)\w*[^.;]*",
    re.IGNORECASE,
)
LOSES = ("dec", "narrow")


def mirrored(words: str) -> Rule | None:
    """The rule of rows that undo what the rows before gained or lost."""
    found = MIRRORED.search(words)
    if found is None:
        return None
    loses = found["way"].lower() in LOSES
    if loses == (found["back"].lower() in LOSES):
        return None
    return Rule(
        "mirror", start=found.start(), end=found.end(), rest=found.group(),
        sign=-1 if loses else 1,
    )  # fmt: skip
