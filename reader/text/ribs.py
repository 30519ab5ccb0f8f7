"""Ribs named by their stitches, "2x2 ribbing (k2, p2)": the figures, which are no numbers of
stitches to be worked, turned to spaces; length kept.
"""

from __future__ import annotations

import re

BY_FIGURES = re.compile(
    r"\b\d\s?(?:[x×X/]|-?by-?)\s?\d\s+(?=(?:twisted\s+|garter\s+|broken\s+)?rib)", re.IGNORECASE
)
SPELLED_OUT = re.compile(
    r"(?<=rib)(?P<more>(?:bing)?\s*)(?P<told>[(\[]\s*k\s*\d\s*(?:tbl\s*)?,?\s*p\s*\d\s*[)\]])",
    re.IGNORECASE,
)

BEHIND = re.compile(
    r"(?P<rib>\brib(?:bing)?),?\s+"
    r"(?P<told>\d\s?(?:[x×X/]|-?by-?)\s?\d|k ?\d ?/ ?p ?\d)\b(?!\s*rib)",
    re.IGNORECASE,
)
"""The figures behind: "rib 1/1", "work in rib 2x2", "rib k1/p1"."""
OF_STITCHES = re.compile(
    r"(?<=rib)(?P<more>(?:bing)?)(?P<told> (?:of )?k(?:nit)? ?[1-4],? (?:and )?p(?:url)? ?[1-4],?)"
    r"(?= (?:for|until|to|and|till)\b)",
    re.IGNORECASE,
)
"""The same without a bracket: "work ribbing of k 1, p 1 for 10 rows"."""


def ribs_named(text: str) -> str:
    """The text with them put so; any text goes in."""
    text = BEHIND.sub(lambda found: found["rib"].ljust(len(found.group())), text)
    text = BY_FIGURES.sub(lambda found: " " * len(found.group()), text)
    for shape in (SPELLED_OUT, OF_STITCHES):
        text = shape.sub(lambda found: found["more"] + " " * len(found["told"]), text)
    return text
