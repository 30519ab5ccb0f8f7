"""A piece that is joined on by the stitches behind it, "join arm with next 3 sc", "crochet ear and
head together with 4 sc": told, and those stitches are the row's. Common practice, no source.
"""

from __future__ import annotations

import re

from reader.pattern.cursor import Cursor
from reader.pattern.phrasing import act_here
from reader.pattern.tree import Act, Deed
from reader.terms.stitches import Craft

VERBS = frozenset(
    ["join", "joining", "attach", "attaching", "connect", "connecting", "crochet", "add", "adding"]
)
_PIECE = (
    r"(?:leg|fin|foot|arm|ear|sock|boot|horn|wing|flipper|paw|tail|antler|trunk|beak|snout|hand"
    r"|fringe|sleeve|collar|hat)s?"
)
WITH_STITCHES = re.compile(
    r"\w+ (?:on |in )?(?:(?:the|an?|your|first|1st|second|2nd|other|next|left|right|one) )*"
    rf"{_PIECE}"
    r"(?: (?:and|to|onto|on|into) (?:the )?(?:body|head|piece|back|side))?(?: together)?"
    r" (?:with|using|by working|working|over) (?:the |your )?(?:next )?"
    r"(?=(?:[2-9]|\d\d) (?:sc|hdc|dc|htr|tr|sts|stitches)\b|(?:sc|hdc|dc|htr|tr) (?:[2-9]|\d\d)\b"
    r"|(?:sc|hdc|dc|htr|tr) in(?:to)? (?:the )?(?:next )?\d)",
    re.IGNORECASE,
)


def piece_joined(cur: Cursor, start: int) -> Act | None:
    """Such words up to the stitches, taken; None (nothing taken) elsewhere."""
    if cur.low() not in VERBS or cur.book.craft is not Craft.CROCHET:
        return None
    begin = cur.tokens[cur.at].start
    found = WITH_STITCHES.match(re.sub(r"\s", " ", cur.text[begin : begin + 90]))
    if found is None:
        return None
    while not cur.done() and cur.tokens[cur.at].start < begin + found.end():
        cur.at += 1
    return act_here(cur, start, Deed.NOTE)
