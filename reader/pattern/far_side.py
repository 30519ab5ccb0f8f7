"""The other side of a foundation chain, in whatever words an author leads there: "turn the corner
and down the other side", "now the underside", "into the free loops of the chain".
"""

from __future__ import annotations

import re

from reader.pattern.cursor import Cursor
from reader.pattern.phrasing import act_here
from reader.pattern.tree import Deed, Node
from reader.terms.stitches import Craft

_MOVES = (
    r"(?:turn|rotate|swing|flip|go|come|continue|cont|carry on|work|proceed|keep going|move|head"
    r"|crochet|do|twist|spin)(?:ing)?"
)
_ALONG = (
    r"(?:the|your|this|a|it|piece|thing|corner|end|upside|down|in|hand|around|round"
    r"|over|back|on|onto|and|then|now|again|to|along|into|up|across|through|for|at|so"
    r"|clockwise|180|degrees|same|without|180°|half|way|halfway|of)"
)
_NAMED = r"(?:foundation |starting |beginning |beg |original |base |same |initial |first )*"
_OF_CHAIN = (
    rf"of (?:the |your |that |this |those |these )*(?:\w+ )?{_NAMED}(?:chains?|chs?"
    rf"|foundation)\b(?: sts| stitches)?"
)
_SIDE = (
    r"(?:other|opposite|second|remaining|bottom|under|lower|far|unworked) (?:long )?(?:side|edge)s?"
)
_LOOPS = (
    r"(?:free|unused|remaining|other|front|bottom|back|spare|leftover|unworked|single)"
    r" (?:loops?|lps?|strands?)"
)
FAR = re.compile(
    rf"(?:(?:(?:{_MOVES}|{_ALONG})\b|[&,]) ?){{0,12}}?"
    rf"(?:{_SIDE}(?: {_OF_CHAIN})?|(?:underside|under-side|underneath|bottom)(?:"
    rf" {_OF_CHAIN})?(?=\W)"
    rf"|{_LOOPS} (?:(?:on|along) the {_SIDE} )?{_OF_CHAIN})"
    r"(?:,? (?:work|working|crocheting|doing|make|with)(?= ))?",
    re.IGNORECASE,
)
NAMES = frozenset(
    ["side", "sides", "edge", "underside", "underneath", "bottom", "loop", "loops", "lp", "lps",
     "strands"]
)  # fmt: skip
FIRST = frozenset(
    ["turn", "turning", "rotate", "rotating", "swing", "flip", "go", "going", "come", "continue",
     "continuing", "cont", "carry", "work", "working", "proceed", "keep", "move", "moving",
     "head", "crochet", "crocheting", "do", "twist", "spin", "the", "now", "then", "and", "&",
     "to", "along", "down", "back", "into", "in", "on", "across", "up", "around", "round",
     "over", "other", "opposite", "second", "bottom", "underside", "through"]
)  # fmt: skip
LOOK = 18
"""Tokens in which the side is named."""


def far_side(cur: Cursor, start: int) -> Node | None:
    """The words that lead to the chain's other side, taken; None (nothing taken) elsewhere: in
    knitting, or where the side is one of a piece, "each side", or of what stitches go into.
    """
    if cur.book.craft is not Craft.CROCHET or cur.low() not in FIRST:
        return None
    if not any(cur.low(ahead) in NAMES for ahead in range(LOOK)):
        return None
    begin = cur.tokens[cur.at].start
    words = cur.text[begin : cur.tokens[min(cur.at + LOOK, len(cur.tokens)) - 1].end + 1]
    found = FAR.match(re.sub(r"\s", " ", words))
    if found is None:
        return None
    while not cur.done() and cur.tokens[cur.at].start < begin + found.end():
        cur.at += 1
    return act_here(cur, start, Deed.OTHER_SIDE)
