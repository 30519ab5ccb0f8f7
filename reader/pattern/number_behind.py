"""Whether a number that follows a stitch counts it: "sc 5", not "sc, 2 dc"."""

from __future__ import annotations

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.place_first import NOT_OURS
from reader.pattern.place_words import LOOP_ONLY, RING_WORDS
from reader.pattern.so_often import boxed_times
from reader.pattern.tree import Num
from reader.terms.stitches import Craft

ONE_OF_THEM = ("next", "same", "first", "last", "each", "every")
YARN_BY = ("in", "with", "using")
"""Before a yarn or a corner, in one word."""


def number_behind(cur: Cursor) -> bool:
    """Whether the number here belongs to the stitch before it ("sc 5")."""
    if cur.kind() != "num":
        return False
    if cur.any_words(LOOP_ONLY, 1) and cur.kind(-1) == "word" and cur.kind(-2) != "num":
        # "sc 24 in BLO"
        return True
    placed = cur.low(1) in ("in", "into") and (
        cur.low(2) in ONE_OF_THEM or cur.kind(2 + (cur.low(2) == "the")) == "ord"
    )
    if cur.low(1) in ("in", "into") and cur.any_words(RING_WORDS, 2 + (cur.low(2) in ("the", "a"))):
        # "sc 6 in magic ring": nothing else was worked before.
        return True
    told = placed or (cur.low(1) in YARN_BY and cur.low(3) in (*STOPS, ""))
    if told and cur.book.craft is Craft.CROCHET:
        # "sc 3 in last st", "sc 5 in white": a bare "3 in last" has a comma before it.
        return cur.kind(-1) == "word" and cur.kind(-2) != "num"
    if cur.book.craft is Craft.KNITTING and cur.low(1) in ("in", "into", "through"):
        # "k 1 in back of st"
        placed = placed or cur.low(2 + (cur.low(2) == "the")) in ("back", "front")
    return placed or (cur.low(1) not in NOT_OURS and _own_number(cur))


def _own_number(cur: Cursor) -> bool:
    """The number after a stitch is its own, not that of the stitch to come ("sc 5", not "sc, 2
    dc").
    """
    after = cur.stitch(1)
    if cur.low(1) in ("k", "p") and cur.low(2) == "wise":
        return True
    if cur.book.craft is Craft.KNITTING and after is not None and cur.kind(1) == "word":
        # "sl2-k1-psso", "k 2 p 2": in knitting the number stands behind its stitch.
        return cur.kind(-1) == "word" and not cur.peek().hyphen
    if after is None or cur.low(1) in ("st", "sts"):
        return cur.low(1) not in ("ch", "chain")
    return cur.book.craft is Craft.KNITTING and cur.low(1) in ("tog", "st", "sts")


def times_behind(cur: Cursor) -> Num | None:
    """The "x 6", "6 times", "twice" that stands behind a stitch, taken; None where none does."""
    if (
        cur.low() in ("x", "*")
        and cur.kind(1) == "num"
        and cur.low(2) in ("", ",", ".", ";", ")", "]", "(", "[", "in", "into")
    ):
        number = cur.number(1)
        cur.at += 2
        return number
    crossed = cur.low(1) == "x" and cur.low(2) in ("", ",", ".", ";", ")", "]")
    if cur.kind() == "num" and (cur.low(1) in ("times", "time") or crossed):
        number = cur.number()
        cur.at += 2
        return number
    boxed = boxed_times(cur)
    if boxed is not None:
        return boxed
    if cur.kind() == "times" and cur.low(1) != "more":
        number = cur.number()
        cur.at += 1
        return number
    return None
