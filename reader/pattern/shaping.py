"""Shaping by rule inside one row: "inc 6 evenly", "dec 1 st each end", "inc in every 4th st" -> Shape."""

from __future__ import annotations

import re

from reader.pattern.cursor import Cursor
from reader.pattern.tree import ONE, Num, Shape

LOOK = 16
"""Tokens that are looked at for the words of a rule."""
WORDS = (
    "inc",
    "increase",
    "increasing",
    "incs",
    "dec",
    "decrease",
    "decreasing",
    "widen",
    "narrow",
    "widening",
    "narrowing",
)
GAIN = ("inc", "increase", "increasing", "incs", "widen", "widening")
SPOTS = re.compile(
    r"\b(?:at |on |in )?(?:each|both|either) (?:end|ends|side|sides|edge)|each end of"
)


def _words(cur: Cursor) -> tuple[list[str], int]:
    lows: list[str] = []
    for ahead in range(LOOK):
        low = cur.low(ahead)
        if low in (",", ";", ".", "(", "[", ")", "]", "*", "") and ahead > 0:
            break
        lows.append(low)
    return lows, len(lows)


def find_shape(cur: Cursor, start: int) -> Shape | None:
    """The shaping rule that stands here, taken; None when the words are a stitch or something else."""
    if cur.low() not in WORDS:
        return None
    gain = 1 if cur.low() in GAIN else -1
    lows, length = _words(cur)
    said = " ".join(lows)
    number = next(
        (Num(cur.peek(n).values) for n in range(1, min(4, length)) if cur.kind(n) == "num"), None
    )
    every = re.search(r"\b(?:in )?every (other|\d+)(?:st|nd|rd|th)?\b", said)
    ends = SPOTS.search(said)
    until = None
    goal = re.search(r"\b(?:until|till) (?:there are )?(\d+)", said)
    if goal:
        until = Num((int(goal.group(1)),))
    if not (
        ("even" in said)
        or ends
        or (
            every and ("st" in lows or "stitch" in lows or "sts" in lows or "loop" in said or every)
        )
        or "across row" in said
    ):
        return None
    if (
        lows[0] in ("inc", "dec")
        and re.match(r"^(?:inc|dec) in (?:next|each|every st|first|last)", said)
        and not ends
        and not every
    ):
        return None
    spots = 2 if ends else 1
    step = 0
    if every and not (
        "row" in said[every.end() : every.end() + 5]
        or "rnd" in said[every.end() : every.end() + 5]
        or "round" in said[every.end() : every.end() + 7]
        or "inch" in said
    ):
        step = 2 if every.group(1) == "other" else int(every.group(1))
    repeats = _repeats(said, cur, length)
    cur.at += length
    return Shape(
        cur.span(start),
        cur.said(start),
        gain,
        number or ONE,
        spots,
        step,
        None,
        repeats,
        None,
        until,
    )


def _repeats(said: str, cur: Cursor, length: int) -> Num:
    """ "5 times", "twice": how often the rule is worked in all."""
    for ahead in range(length):
        if cur.kind(ahead) == "times":
            return Num(cur.peek(ahead).values)
        if cur.kind(ahead) == "num" and cur.low(ahead + 1) in ("times", "time", "x"):
            return Num(cur.peek(ahead).values)
    return ONE
