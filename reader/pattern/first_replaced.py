"""Words that only say which stitch of a round its first chain is, "with ch 3 as first dc", "the
first dc is a ch 3", "counting ch 3 as 1st dc": told of the stitches beside them, and nothing more
is worked. Wordings are common practice, no source.
"""

from __future__ import annotations

import re

from reader.pattern.cursor import Cursor
from reader.pattern.phrasing import act_here
from reader.pattern.tree import Act, Deed
from reader.terms.stitches import Craft

_CHAIN = (
    r"(?:a |an |the |your )?(?:beg(?:inning)? |first |starting )?"
    r"(?:ch(?:ain)? ?-? ?\d|\d ?-? ?ch)"
)
_FIRST = (
    r"(?:the |your |a |each |every )?(?:very )?(?:first|1st) (?:sts?|stitch|sc|hdc|dc|tr|htr|treble"
    r"|double)(?: crochet)?(?: of (?:the |each |every )?(?:first |1st )?(?:round|rnd|group|shell"
    r"|cluster|corner|petal)s?)?(?: (?:in|on) (?:each|every|this|the) (?:round|rnd))?"
)
_OPENS = r"(?:beg(?:in(?:ning)?)?|start(?:ing)?) with "
OPENS = re.compile(
    rf"{_OPENS}{_CHAIN} (?:as|for|instead of|in place of) {_FIRST},?(?= (?:work|make|into|in)\b)",
    re.IGNORECASE,
)
"""At a round's beginning, before all that is worked."""
BEHIND = re.compile(
    rf"(?:(?:and|but|always) )?"
    rf"(?:(?:{_OPENS}|with |using |counting |making |working |substituting )"
    rf"{_CHAIN} (?:as|for|instead of|in place of|to replace) {_FIRST}"
    rf"|replacing {_FIRST} (?:with|by) {_CHAIN}"
    rf"|(?:where )?{_FIRST} (?:is|being|are|=) (?:always )?(?:made (?:as|with) |worked as "
    rf"|replaced (?:with|by) )?{_CHAIN})(?= ?(?:[,.;:)]|$))",
    re.IGNORECASE,
)
"""Behind the stitches that it is told of."""
BEGINS = frozenset(
    ["with", "using", "counting", "making", "working", "substituting", "replacing", "beginning",
     "begin", "beg", "starting", "start", "the", "first", "1st", "where", "and", "but", "always"]
)  # fmt: skip
LONGEST = 110


def find_first_replaced(cur: Cursor, start: int) -> Act | None:
    """Such words, taken; None (nothing taken) elsewhere."""
    if cur.low() not in BEGINS or cur.book.craft is not Craft.CROCHET:
        return None
    begin = cur.tokens[cur.at].start
    said = re.sub(r"\s", " ", cur.text[begin : begin + LONGEST])
    if "ch" not in said:
        return None
    worked = any(cur.stitch(-back) is not None for back in range(1, cur.at + 1))
    found = (BEHIND if worked else OPENS).match(said)
    if found is None:
        return None
    while not cur.done() and cur.tokens[cur.at].start < begin + found.end():
        cur.at += 1
    return act_here(cur, start, Deed.NOTE)


def only_first_told(words: str) -> bool:
    """Whether a bracket says only that, "(first dc is a ch 3)"."""
    return BEHIND.fullmatch(words) is not None
