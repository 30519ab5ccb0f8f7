"""Clean text -> the same text, length kept, without slip stitches that only level a round's end:
"inc 8 sts in each round, ending last round with a sl st", "Sl st in next 2 sts to level off". They
are none of the round's stitches, and behind several rounds they end only the last.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

LEVELLED = Sought(
    ("sl st", "slip st", "slst", "slipst"),
    r"(?:\s*[,;]\s*(?:and\s+|then\s+)?|\s+and\s+)(?:end|ending|finish|finishing|close|closing)\s+"
    r"(?:(?:the|this|each|every|last|final|of|each\s+of\s+the)\s+){0,3}(?:row|rnd|round)s?\s+"
    r"(?:off\s+)?with\s+(?:a|an|one|1)?\s*sl(?:ip)? ?st(?:itch)?\b"
    r"(?:\s+(?:in(?:to)?|to)\s+(?:the\s+)?(?:next|first|1st|following)\s+"
    r"(?:s ?c|h?d ?c|sdc|s d c|st|stitch)\b)?(?=\s*(?:[.,;)(]|and\b|$))",
    re.IGNORECASE,
)


_SENTENCE = r"(?:(?!\. (?-i:[A-Z(])|[;\n:*()\[\]]).)"
"""A stop before a small letter ends a short word."""
SO_THAT_LEVEL = Sought(
    ("level", "even", "smooth", "neat", "hide", "jog", "height"),
    rf"(?<=[.;)\]] )(?={_SENTENCE}{{0,90}}\b(?:sl ?sts?|slip ?st(?:itch(?:es)?|s)?|s\. ?s|ss)\b)"
    rf"{_SENTENCE}{{8,120}}?"
    r"\b(?:level|even(?: out| off)?|smooth(?:en)?|neat(?:en)?|hide|jog|height)\b"
    rf"{_SENTENCE}{{0,60}}(?:\.(?= |$)|$)",
    re.IGNORECASE | re.MULTILINE,
)
""" "At the end of the last round work s.s. into the last 3 sts. so that the edge is level." """

LAST_OF_MANY = Sought(
    ("fasten", "fo", "f/o", "finish", "break", "cut"),
    r"^(?P<rows>[^\w\n]*(?:(?:rnds?|rounds?|rows?|r)\.? ?\d+ ?(?:-|–|—|to|through|thru) ?\d+"
    r"|(?:work|next) \d+ (?:more )?(?:rnds|rounds|rows))[^\n]*?)"
    r"(?P<slip>[,;.] (?:then |and )*(?:sl ?st|slip ?st(?:itch)?|ss)\b"
    r"(?: (?:in(?:to)?|to) (?:the )?next(?: \d{1,2})?(?: (?:sts?|stitch(?:es)?|[shd]{1,2}c|h?tr))?"
    r"| \d{1,2}(?: sts)?)?)(?=[,;.]? ?(?:and )?(?:fasten|f/?o\b|finish|break|cut))",
    re.IGNORECASE | re.MULTILINE,
)
"""Slip stitches before the yarn is cut, told behind several rounds: they end the last."""


def without_levelling(text: str) -> str:
    """The text with such words blank."""
    text = LAST_OF_MANY.sub(lambda found: found["rows"] + " " * len(found["slip"]), text)
    text = SO_THAT_LEVEL.sub(lambda found: re.sub(r"\S", " ", found.group()), text)
    return LEVELLED.sub(lambda found: re.sub(r"\S", " ", found.group()), text)
