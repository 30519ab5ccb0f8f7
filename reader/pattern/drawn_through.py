"""A join to what lies beside, "drop loop from hook, insert hook in center of petal, pick up loop
and pull through" -> a thing done that works no stitch; behind a group it makes a popcorn.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from reader.pattern.cursor import Cursor
from reader.pattern.tree import Act, Deed, Group, Node, Work
from reader.terms.stitches import Craft

_LOOP = r"(?:the |your |dropped |that |free |last )*(?:loop|lp|st|stitch)"
_HOOK = r"(?:the |your |crochet )*(?:hook|needle)"
_STOP = r"(?: ?(?:,|;|and|then))*"
DRAWN = re.compile(
    rf"(?:(?:drop|slip|sl|take|draw|let|pull|remove) (?:go )?{_LOOP} (?:from|off)(?: of)? {_HOOK}"
    rf"|(?:remove|take out|withdraw|take) {_HOOK}(?: (?:from|out of) {_LOOP})?)"
    rf"{_STOP} (?:insert|put|pass|place) (?:(?:it|{_HOOK}) )?"
    r"(?:in|into|through|thru|under|from)\b(?P<at>(?: (?!insert\b|repeat\b)[a-z0-9'-]+){1,14})"
    rf"{_STOP} (?:pick|draw|pull|take|catch|bring)(?: up)? {_LOOP}(?: again)?"
    rf"(?:{_STOP} (?:pull|draw|bring|take)(?: up)?(?: (?:{_LOOP}|it))?)?(?: (?:through|thru)"
    r"(?: (?:the |this |that |same )*(?:st|stitch|loop|lp|it|picot|ch|petal|space|sp))?)?"
    r"(?= [,.;)(:]|$)"
)
OF_GROUP = re.compile(r"\b(?:1st|first|top of|starting|beginning|beg)\b")
"""Where the loop of a popcorn is drawn through: the first stitch of its group."""
BEGIN = frozenset(["drop", "slip", "sl", "take", "draw", "let", "pull", "remove", "withdraw"])
LONGEST = 44
"""Tokens looked at."""


def find_drawn_through(cur: Cursor, made: Sequence[Node]) -> Act | None:
    """The join that stands here, taken; None (nothing taken) where none does."""
    if cur.low() not in BEGIN or cur.book.craft is not Craft.CROCHET:
        return None
    found = DRAWN.match(" ".join(cur.lows[cur.at : cur.at + LONGEST]))
    if found is None or (_group_before(made) and OF_GROUP.search(found["at"])):
        return None
    start = cur.at
    cur.at += len(found.group().split())
    return Act(cur.span(start), cur.said(start), Deed.NOTE)


def _group_before(made: Sequence[Node]) -> bool:
    """Whether several stitches of one place stand right before, which may be drawn together."""
    last = made[-1] if made else None
    several = isinstance(last, Work) and last.number is not None and last.number.values[0] > 1
    return several or isinstance(last, Group)
