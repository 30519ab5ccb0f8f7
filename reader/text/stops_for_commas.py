"""Knitted rows whose stitches are parted by full stops, "*K2. P2. Repeat from * to end.", read as
if commas stood there: one row, and not one of every stitch; length kept.
"""

from __future__ import annotations

import re

_STITCH = r"(?:knit|k|purl|pearl|p|slip|sl|yo|wl fwd|wool fwd|m|make|inc|dec)"
_TOGETHER = r"(?: ?(?:tog|together|tbl|sts?|stitch(?:es)?|pwise|kwise|purlwise|knitwise))*"
_ITEM = (
    rf"(?:{_STITCH} {{0,2}}\d+{_TOGETHER}|p\.? ?s\.? ?s\.? ?o"
    r"|pass (?:slipped|sl) (?:st|stitch) over"
    r"|(?:knit|k|purl|p) {1,2}(?:to|until)(?: within)?(?: the)?(?: last)? \d+"
    rf"{_TOGETHER}(?: from end)?)"
)
_BEGUN = r"(?:[.:*(—]|--| -(?= )|^(?:[ ]*(?:row|rnd|round) \d+(?= ))?)[ ]*\n?[ ]*"
_ON = (
    rf"(?:\*?[ ]*{_ITEM}(?=[ ]*(?:[.,;(\[=—-]|\n|\Z))|rep(?:eat)? from \*|turn[.]"
    r"|(?:knit|k|purl|p) +(?:to|until|across|all)\b)"
)
STOP = re.compile(
    rf"(?P<lead>{_BEGUN})(?P<item>{_ITEM}) *\.(?=[ ]*\n?[ ]*{_ON})", re.IGNORECASE | re.MULTILINE
)
"""A stitch alone between two stops, with another behind it."""


def with_commas(text: str) -> str:
    """The text with commas for such stops."""
    places = []
    found = STOP.search(text)
    while found is not None:
        places.append(found.end() - 1)
        # The stop that ends one stitch stands before the next.
        found = STOP.search(text, found.end() - 1)
    out = list(text)
    for at in places:
        out[at] = ","
    return "".join(out)
