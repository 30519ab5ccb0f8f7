"""Clean text -> the same text, length kept, with the stitches of needlework books of the 1880s by
their later names: "3 plain on the ring" (a plain stitch is double crochet), "1 single on the 1st
chain" (a slip stitch), and a comma for the "=" between what is done one after the other.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

_N = r"(?:\d+|one|two|three|four|five|six|seven|eight|nine|ten|twelve)"
PLAIN = Sought(
    ("plain",),
    rf"(?P<lead>\b{_N}\s(?:more\s|next\s|last\s|first\s)?|\b(?:\d+(?:st|nd|rd|th)|upper|first|last"
    r"|next|each|every|between|those|these|the)\s)"
    r"(?P<name>plain(?:\s(?:ones|stitch(?:es)?))?)\b"
    r"(?!\s(?:rows?|rnds?|rounds?|knit\w*|purl\w*|(?:double|single)\s|dc\b|sc\b|d\.|s\.|crochet"
    r"|colou?rs?|yarn|wool|cotton|edges?|band|part|side|stocking))",
    re.IGNORECASE,
)
"""A stitch called plain, behind a number or in a place."""
COUNTED = re.compile(rf"\b{_N}\splain\b(?!\s(?:rows?|rnds?|rounds?|knit|purl))", re.IGNORECASE)
OTHERS = Sought(
    ("treble", "single", "picot", "chain"),
    r"\b(?:half[- ]?|double |triple )?trebles?\b|\bpicots?\b"
    r"|\b(?:1|one|a) single\b|\d chains?\b",
    re.IGNORECASE,
)
KNITTED = Sought(("knit", "purl"), r"\bknit|\bpurl", re.IGNORECASE)
SINGLE = re.compile(
    rf"(?<=\s)(?P<lead>(?:{_N}|a)\s)(?P<name>single(?:\sstitch(?:es)?|s)?)\b(?!\s(?:crochet|chain"
    r"|trebles?|sc\b|row|thread|loop))",
    re.IGNORECASE,
)
EQUALS = re.compile(r"(?<=[A-Za-z\d.*])(?P<gap>\s=+)(?=\s)(?!\s\d+(?:\s\w+)?\s*(?:[.;)\n]|$))")
"""Twice or once "=", but not before a total."""


def plain_as_double(text: str) -> str:
    """The text so named, where several stitches are called plain beside chains and trebles and
    nothing is knitted; any other text as it is.
    """
    if not PLAIN.may_stand(text) or KNITTED.search(text) or not OTHERS.search(text):
        return text
    if len(COUNTED.findall(text)) < 2 or re.search(r"\bd\.? ?c\b|\bdouble crochet\b", text):
        return text
    text = PLAIN.shape.sub(lambda m: m["lead"] + "dc".ljust(len(m["name"])), text)
    text = SINGLE.sub(lambda m: m["lead"] + "ss".ljust(len(m["name"])), text)
    return EQUALS.sub(lambda m: ",".ljust(len(m["gap"])), text)
