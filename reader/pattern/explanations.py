"""What a bracket right behind a stitch says of how it is made or what it was: no work of its own.

"m1 (make one by knitting into the back of the strand)", "ssk (= slip 2, k2tog tbl)", "2 sc in next
st (two sc in the same stitch)", "k2tog (1 st decreased)".
"""

from __future__ import annotations

import re

from reader.pattern.tree import Work
from reader.terms.stitches import Kind

SAID_SO = re.compile(
    r"(?:=|or |i e |that is |meaning |this is |this makes |see )"
    r"|.*\b(?:means?|stands for|is worked|is made)\b"
)
"""Words that only explain."""
OWN_CHANGE = re.compile(
    r"(?:an? |\d |one |two )?(?:sts? |stitch(?:es)? )?(?:increas|decreas|inc|dec|made\b)\w*'?d?"
    r"(?: (?:made|worked))?(?: (?:at|on) (?:both|each|either) (?:ends?|sides?))?(?: made)?"
)
"""What the stitches before were: "1 st increased", "increase at both ends made"."""
HOW = re.compile(
    r"(?:to |by |work(?:ing)? )?(?:(?:make|making) (?:1|one)|m1|inc(?:rease)?|dec(?:rease)?"
    r"|increasing|decreasing|knitting|purling|picking|lifting|slipping|inserting|passing)\b"
    r".*\b(?:by|into|pick\w*|lift\w*|front|back|strand|bar|loop|over|tog\w*|twice)\b.*"
    r"|(?:pick|lift) up .*\b(?:strand|bar|loop|thread)\b.*|insert\b.*|pull up a loop\b.*"
    r"|draw up a loop\b.*"
)
"""How an increase or a decrease is worked."""
SLIPS = re.compile(r"(?:sl|slip) ?\d?\b.*\b(?:tog|together|k2tog|over|psso|tbl)\b.*")
SAME_SPOT = re.compile(
    r"(?:2|two|3|three) (?:[a-z]+ ){1,3}in(?:to)? (?:the )?same (?:st|stitch|place)"
)
OF_ONE = re.compile(
    r"(?:1|one|an?) (?:st |stitch )?(?:inc|dec)\w*'?d?(?: made)?"
    r"|(?:inc|dec)(?:reas(?:e|ing|es))?\.? (?:1|one)(?: st| stitch)?"
    r"|(?P<made>(?:1|one) (?:st|stitch) made)",
    re.IGNORECASE,
)
SHAPED = re.compile(
    r"\b(?:m1\w?|inc|dec|k2tog|ssk|skpo?|psso|kfb|yo|\w*2tog|2 [shd]{1,2}c in)\b", re.IGNORECASE
)
CHANGES = (Kind.INCREASE, Kind.DECREASE)


def explains(words: str, last: Work) -> bool:
    """Whether the words of a bracket only explain the stitch before it."""
    words = words.rstrip(" .")
    if SAID_SO.match(words) or OWN_CHANGE.fullmatch(words):
        return True
    if last.number is not None and last.number.values[0] > 1 and SAME_SPOT.fullmatch(words):
        return True
    changes = last.stitch.kind in CHANGES
    return changes and (HOW.fullmatch(words) or SLIPS.fullmatch(words)) is not None


REPEATED = re.compile(r"[,;.]? ?(?:rep(?:eat)?\b|[*)\]])", re.IGNORECASE)


def of_one_stitch(body: str, words: str, behind: str) -> bool:
    """Whether a bracket tells of one stitch, and not of its row: "k2, yo (1 st made)", and "(1 st
    increased)" where the row has more than one such, or one that is repeated.
    """
    one = OF_ONE.fullmatch(body.rstrip(" ."))
    if one is None or one["made"] is not None:
        return one is not None
    return len(SHAPED.findall(words)) > 1 or REPEATED.match(behind) is not None
