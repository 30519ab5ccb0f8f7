"""A goal told in stitches of one colour, "until there are 56 color B sts": the borders of another
colour are on the needle too.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

_NOT = (
    r"(?!(?:sts?|stitches|more|rem\w*|left|on|in|of|are|loops|live|total|extra|heel|gusset|thumb|sc|dc"
    r"|rows?|times|k|p|knit|purl|body|sleeve|front|back)\b)"
)
_OF = rf"(?P<of>colou?r \w+|{_NOT}[a-z]+)"
GOAL = re.compile(
    rf"\b(?:until|till)\b[^.;]*?\b(?P<n>\d+) {_OF} (?:sts|stitches)\b", re.IGNORECASE
)
OF_THEM = re.compile(
    rf"\b(?:until|till)\b[^.;]*?\b(?P<n>\d+) (?:sts|stitches) (?:of|in) (?:the )?{_OF}(?=[,.;]|$)",
    re.IGNORECASE,
)


def others_beside(ledger: Ledger, words: str) -> int:
    """How many stitches of other colours are on the needle, where the words run to a number of one
    colour and a row before tells how many of all were of it; 0 elsewhere.
    """
    found = GOAL.search(words) or OF_THEM.search(words)
    if found is None:
        return 0
    colour = re.escape(found["of"])
    told = re.compile(
        rf"\b(\d+)(?: (?:sts|stitches))?(?: (?:of|in|with))? {colour}\b", re.IGNORECASE
    )
    for entry in reversed(ledger.entries):
        base = entry.base.stitches if entry.base is not None else None
        named = told.findall(ledger.in_figures(entry.row.start, entry.row.end))
        if base is not None and entry.gain is not None and len(named) == 1:
            rest = base + entry.gain - int(named[0])
            return rest if 0 < rest < base else 0
    return 0
