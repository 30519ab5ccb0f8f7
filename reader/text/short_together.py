"""Knitting text -> the same text, length kept, with stitches together as old books cut them short:
"k. 2 t.", "pearl 2 tg.", "k. 2\nto." -> "k2tog"; and slipped stitches said to go together, "sl 2
sts tog kwise", "sl 2 as if to k 2 tog", as those of one manner, "sl 2 knitwise".
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

TOGETHER = Sought(
    ("t",),
    r"(?<![\w.])(?:(?P<verb>k|kn|knit|p|pl|purl|pearl|take)\.?\s*|(?<=[,;]\s))"
    r"(?P<n>[2-5]|two|three)\s+(?:(?:t|tg|tgr)\b(?P<stop>\.?)(?!\w)|to\.(?=[,;]))",
    re.IGNORECASE,
)
"""Behind the figure the letter can be nothing else."""
ENDS = re.compile(r"\s*(?:\n\s*(?:\n|\d+(?:st|nd|rd|th|d)\b)|$|[A-Z][a-z]+\b)")
NUMBERS = {"two": "2", "three": "3"}


SLIPPED = Sought(
    ("tog",),
    r"\b(?P<sl>(?:sl|slip)\.? ?(?:next )?[2-4])(?: sts| stitches)?"
    r"(?: tog(?:ether)?(?=,| (?:[kp]|knit|purl)(?:-?wise)\b)|(?: tog(?:ether)?)?,? as if to"
    r" (?:k|knit|p|purl) ?(?:[2-4]|two|three|them) ?tog(?:ether)?)",
    re.IGNORECASE,
)


STRAY_COMMA = Sought((",.",), r"(?<=\b[A-Za-z]),\.(?=\s?\d)")
"""A slip of the press in an abbreviation: "m,. 1"."""


def together_told(text: str) -> str:
    """The text with them put so; a full stop that ends the row stays."""
    text = SLIPPED.sub(lambda found: found["sl"].ljust(len(found.group())), text)
    return TOGETHER.sub(_together, STRAY_COMMA.sub(". ", text))


def _together(found: re.Match[str]) -> str:
    said = found.group()
    number = NUMBERS.get(found["n"].lower(), found["n"])
    verb = (found["verb"] or "").lower()
    name = f"{'p' if verb[:1] == 'p' else 'k' * bool(verb)}{number}tog"
    stop = "." if found["stop"] and ENDS.match(found.string, found.end()) else ""
    line = "\n" if "\n" in said else ""
    if len(name) + len(stop) + len(line) > len(said):
        return said
    return name.ljust(len(said) - len(stop) - len(line)) + stop + line
