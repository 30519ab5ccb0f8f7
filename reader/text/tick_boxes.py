"""Boxes to tick and lines to fill in that a worksheet has beside its rows, "[ ] Round 2  2 dc into
every stitch.  My count: ____ (16)" -> the row and its total; length kept.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

_BOX = r"(?:\[[ _xX✓✔]?\]|\([ _✓✔]\)|[☐☑☒□❑❏◻⬜✅])"
_KEY = r"(?:rounds?|rnds?|rows?|rds?|r|rnd\.)"
BOX = re.compile(
    rf"^(?P<first>[ \t]*(?:[-*•] )?{_BOX}[ \t]*)(?=\S)|(?P<behind>[ \t]*{_BOX}[ \t]*)$"
    rf"|(?<=\d)(?P<amid>[ ]{_BOX})(?=[ ]*[:.)]?[ ])"
    rf"|^(?P<line>[ \t]*_{{1,6}}[ \t]*)(?={_KEY}[ ]?\d)",
    re.MULTILINE | re.IGNORECASE,
)
FILLED = Sought(
    ("__", "..."),
    r"(?:(?:my|your) )?(?:(?:stitch |st )?(?:count|total|number)|sts|stitches|done|checked?|date)"
    r"[ ]?[:=]?[ ]?(?:_{2,}|\.{4,})(?:[ ]?(?:sts|stitches))?", re.IGNORECASE,
)
""" "My count: ____": what the maker writes in."""
LEAST = 2
"""Boxes that make a list to tick."""


def without_boxes(text: str) -> str:
    """The text without them; a box alone stays."""
    text = FILLED.sub(lambda found: " " * len(found.group()), text)
    if sum(1 for _ in BOX.finditer(text)) < LEAST:
        return text
    return BOX.sub(lambda found: " " * len(found.group()), text)
