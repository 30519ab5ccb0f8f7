"""The yarn that is taken up or held: "pick up White and", "using a separate ball of Brown", which
work nothing.
"""

from __future__ import annotations

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.phrasing import act_here
from reader.pattern.tree import Act, Deed
from reader.terms.stitches import Craft

TAKES = ("pick up", "picking up", "take up", "bring up", "resume", "return to", "go back to")
THE_YARN = ("yarn", "thread", "wool", "color", "colour", "main", "contrasting", "mc", "cc")
BALL = tuple(
    f"{which} {kind}{ball} of" for which in ("a", "another", "the", "a 2nd", "a second", "1", "one")
    for kind in ("", "separate ", "new ", "different ", "second ", "fresh ", "small ")
    for ball in ("ball", "skein", "strand", "bobbin", "length", "piece", "end", "hank")
)
NAME = 3
"""Words of a yarn's name at most."""


def find_yarn(cur: Cursor, start: int) -> Act | None:
    """The change of yarn, taken; None, and nothing taken, where none stands here."""
    ball = cur.low() in ("with", "using") and cur.any_words(BALL, 1)
    if ball:
        cur.at += 1 + ball
    elif cur.book.craft is not Craft.CROCHET or not cur.accept(*TAKES):
        return None
    elif not (_named(cur) or cur.low() in THE_YARN):
        cur.at = start
        return None
    for _ in range(NAME):
        if _over(cur):
            break
        cur.at += 1
    cur.accept("and", "then", "to")
    return act_here(cur, start, Deed.COLOUR)


def _named(cur: Cursor) -> bool:
    """Whether a name stands here, "White"."""
    token = cur.peek()
    return token.kind == "word" and cur.text[token.start : token.end].istitle()


def _over(cur: Cursor) -> bool:
    """Whether the yarn's name is over."""
    begins = cur.stitch() is not None or cur.kind() in ("num", "stars")
    return begins or cur.done() or cur.low() in (*STOPS, "and", "then", "to", "work", "make", "ch")
