"""Two together, over and over: "K2tog until there are 4 sts left", "keep knitting 2 together around
until 6 remain" -> Rule.
"""

from __future__ import annotations

import re

from reader.pattern.goals import goal_in
from reader.pattern.rule import Rule

OVER_AND_OVER = re.compile(
    r"^\W*(?:(?:then|and|now|just)\s+)*"
    r"(?:(?:keep|continue|cont|go on|carry on|work)\s+(?:to\s+|on\s+)?)?"
    r"[*(\[]*(?:(?:knit|purl|k|p|work|tak|[sh]?dc|sc|h?tr)\w*\s?2(?:\s(?:sts|stitches))?"
    r"\s?tog(?:ether)?|ssk|dec)\b[*)\]]*(?:[;,]?\s+rep(?:eat)?\s+from\s+\*)?"
    r"(?:\s+(?:all|across|around|round|every|each|over and over|the|st|stitch|way|row))*,?\s+"
    r"(?:until|till)\s+(?P<until>(?:there\s+(?:are|is)|you|only|just|\d+\s+(?:sts|stitches|st)?\s*"
    r"(?:are left|left|rem))[^.;,]*)",
    re.IGNORECASE,
)


def halved(words: str) -> Rule | None:
    """The rule of rows in which stitches are taken two together until so many are left; words:
    with single spaces, numbers in figures.
    """
    found = OVER_AND_OVER.match(words)
    goal = goal_in(f"until {found['until']}") if found else None
    if found is None or not goal:
        return None
    return Rule("halve", goal=goal, start=0, end=found.end(), rest=found.group())
