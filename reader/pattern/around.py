"""How far a stitch is worked where no more is told: "around", "across", "to end"."""

from __future__ import annotations

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.place_words import AROUND, ROW_WORDS

ONE_OF_THEM = ("next", "post", "last", "first", "stem", "bar", "base", "foot", "same")
"""Behind "around the", with a stitch's name, these tell of one place."""


def around_alone(cur: Cursor) -> bool:
    """Takes such words where they say how far the stitch before them is worked; whether they do.
    """
    if cur.low() == "closely":
        # "sc closely along edge of material": as many as it takes.
        while not cur.done() and cur.low() not in STOPS:
            cur.at += 1
        return True
    length = cur.any_words(AROUND)
    if not length and cur.low() == "all" and cur.low(1) in (*STOPS, ""):
        length = 1
    if not length:
        return False
    after = cur.peek(length)
    nexts = cur.low(length)
    if nexts in ("next", "first", "last", "each", "post", "same", "every", "1st") or after.kind in (
        "num",
        "ord",
    ):
        return False
    if nexts == "the" and (cur.low(length + 1) in ONE_OF_THEM or cur.stitch(length + 1)):
        return False
    if cur.low() in ("even", "plain", "straight", "round") and nexts in ("row", "rows", "sts"):
        return False
    stitch = cur.stitch(length)
    if (
        stitch is not None
        and cur.low() == "around"
        and after.spaced
        and cur.low(length) not in ("k", "p")
    ):
        return False
    cur.at += length
    while cur.low() in ROW_WORDS and cur.low(1) not in ("next",):
        cur.at += 1
    return True
