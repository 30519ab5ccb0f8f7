"""Old lace whose rows are called needles: "1st needle--" reads as "1st row   --"; a round told
with a line for each needle, "Rnd 1: / N1: K to end.", as one line. The length is kept.
"""

from __future__ import annotations

import re
from itertools import pairwise

LABEL = re.compile(r"^[^\w\n]*(\d+)(?:st|nd|rd|th)\s+needle\b\s*(?:[.:—-])", re.MULTILINE)
NEEDLE = re.compile(
    r"(?<=\d(?:st|nd|rd|th)\s)needles?\b|(?<=\bfirst\s)needle\b|(?<=\blast\s)needle\b",
    re.IGNORECASE,
)
MOST_NEEDLES = 5
"""A set has no more; a higher number is that of a row."""


def needles_as_rows(text: str) -> str:
    """The text with "needle" put as "row" where its lines are labelled by more needles than a set
    has.
    """
    highest = max((int(found.group(1)[:4]) for found in LABEL.finditer(text)), default=0)
    if highest <= MOST_NEEDLES:
        return text
    return NEEDLE.sub(lambda m: "row".rjust(len(m.group())), text)


_NEEDLE = r"(?:needles?|ndls?|n)"
AS_ANOTHER = re.compile(
    rf"(?P<which>\b(?:{_NEEDLE} ?[1-5](?: ?(?:and|&|,) ?[1-5])*"
    rf"|(?:(?:1st|2nd|3rd|4th|first|second|third|fourth) {_NEEDLE})))[ ]"
    r"(?=(?:the )?(?:same )?(?:as|like)(?: (?:for|on|the))*"
    rf" (?:{_NEEDLE} ?[1-5]|(?:1st|2nd|3rd|first|second|third) (?:{_NEEDLE}|[;.,])))",
    re.IGNORECASE,
)
"""A needle told by another, with no mark between: "needle 3 as needle 1"."""
ONE_NEEDLE = re.compile(
    r"[ \t]*(?:N|Ndl|Needle)s?\.? ?[1-5](?: ?(?:&|\+|and|,) ?[1-5])*[ ]?(?:[:.—]|-(?=\s))",
    re.IGNORECASE,
)
OF_ROUND = re.compile(
    r"\b(?:rnd|round|row)s?\b[^\n:]{0,20}:[ \t]*$|^\W*R ?\d+[ ]?:[ \t]*$", re.IGNORECASE
)
TOTAL_ONLY = re.compile(r"[ \t]*[(\[<]?\d+ ?(?:sts?|stitches)\b[^\n]{0,20}$", re.IGNORECASE)


def needles_in_rounds(text: str) -> str:
    """The text with the lines of a round's needles, and its total, behind the round's label."""
    if " as " in text or " like " in text:
        text = AS_ANOTHER.sub(lambda found: f"{found['which']}:", text)
    lines = text.split("\n")
    made = [lines[0]]
    inside = False
    for before, line in pairwise(lines):
        needle = ONE_NEEDLE.match(line) is not None
        begins = needle and OF_ROUND.search(before) is not None
        goes_on = inside and (needle or TOTAL_ONLY.match(line) is not None)
        inside = begins or goes_on
        made += [" " if inside else "\n", line]
    return "".join(made)
