"""Rows in the shortest hand: "(sc, inc) 6 (18)", where a number between the bracket and the total
says how often -> "(sc, inc)x6 (18)", length kept.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

_STITCH = r"(?:sc|inc|in|dec|hdc|dc|tr|htr|sts?|ch)"
BARE_TIMES = re.compile(
    rf"(?P<body>[(\[](?=[^()\[\]\n]*\b\d*{_STITCH}\b)[^()\[\]\n]+[)\]]) (?P<times>\d{{1,2}})"
    r"(?=\s*[(\[<{]\s*\d{1,4}(?:\s*[a-z]{1,8})?\s*[)\]>}]\s*(?:[.,;\n]|$)"
    r"|\s*(?:—|--?>?|=)\s*\d{1,4}\s*(?:[a-z]{1,8})?\s*(?:[.\n]|$))",
    re.IGNORECASE,
)
NUMBER_BETWEEN = re.compile(r"[)\]] \d{1,2}\s*[(\[<{—=-]")
"""Without this no such number stands in a text; sooner found than all of BARE_TIMES."""
ON_OFF = Sought(
    ("/o",), r"\b(?P<what>[CB])/O\b(?=[ ]|$)|\b(?P<low>[cb])/o\b(?=[ ]|$)", re.MULTILINE
)
"""Short for cast on and bind off: "C/O 42 sts"."""
RPT = Sought(("rpt",), r"\brpt\b", re.IGNORECASE)
"""Short for repeat, as some write it."""


NUMBER_FIRST = Sought(("tog",), r"\b(?P<n>[2-9])(?P<gap> ?)(?P<what>sc|hdc|dc|tr|htr)tog\b", re.I)
"""Stitches together with their number first: "2sctog"."""
AND_ON = re.compile(
    r"^(?P<label>[ ]*(?:rounds?|rnds?|rows?|rds?|R) ?\d{1,3})\+(?=[ ]+[a-z(*\[\d])", re.I | re.M
)
"""A label with no mark but that of the rows after it: "Rounds 7+ sc in each sc"."""


def with_times(text: str) -> str:
    """The text with an x before such a number, in the place of the space; "rpt" is "rep", "C/O" is
    "Co".
    """
    text = NUMBER_FIRST.sub(lambda m: f"{m['what']}{m['n']}tog{m['gap']}", text)
    text = AND_ON.sub(lambda found: f"{found['label']}:", text)
    text = ON_OFF.sub(lambda found: f"{found['what'] or found['low']}o ", RPT.sub("rep", text))
    if not NUMBER_BETWEEN.search(text):
        return text
    return BARE_TIMES.sub(lambda found: f"{found['body']}x{found['times']}", text)
