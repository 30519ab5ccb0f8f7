"""Stitches that a row's plain work is told to leave out, behind it: "sc in each sc, leaving the
last 4 unworked", "work in every stitch, omitting 2 at each end" -> all but those.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.place_words import STITCH_NOUNS
from reader.pattern.tree import (
    ONE,
    Group,
    LeaveRest,
    Node,
    Num,
    Place,
    Repeat,
    Skip,
    Until,
    Where,
    Work,
)

LEFT_OUT = (
    "leaving out", "leave out", "leaving off", "leave off", "leaving", "leave", "omitting", "omit",
    "missing", "miss", "skipping", "skip", "excepting", "except for", "except", "not working in",
    "not working", "without working in", "without working", "do not work in", "do not work",
    "don't work in", "don't work", "with the exception of", "all but", "but not in", "but not",
)  # fmt: skip
UNWORKED = frozenset(["unworked", "unused", "free", "unfinished"])
BOTH = frozenset(["each", "both", "either"])
SIDES = frozenset(["end", "ends", "side", "sides", "edge", "edges"])
FIRST = frozenset(["first", "beginning", "beg", "start"])
LAST = frozenset(["last", "final", "end", "ends", "other"])
LITTLE = frozenset(
    ["the", "first", "last", "final", "of", "at", "in", "on", "row", "rnd", "round", "each", "both",
     "either", "other", "end", "ends", "side", "sides", "edge", "edges", "beginning", "beg",
     "start", "and", "this"]
)  # fmt: skip
LONGEST = 14
"""Words of such a phrase."""


@dataclass(frozen=True, slots=True)
class _Told:
    """How many are left out, and where."""

    number: Num
    first: bool
    last: bool
    unworked: bool


def find_all_but(cur: Cursor, made: list[Node]) -> LeaveRest | Skip | None:
    """The phrase that stands here, taken, and the work before it (the last of made) cut down to all
    but those; before any work the stitches are passed. None (nothing taken or changed) where there
    is none.
    """
    if not any(isinstance(one, Work | Group | Repeat) for one in made):
        return _passed(cur)
    last = made[-1] if made else None
    plain = isinstance(last, Work) and last.place.where in (Where.EACH, Where.REST)
    over = isinstance(last, Repeat) and last.until is Until.OPEN and not last.ending
    if last is None or not (plain or over):
        return None
    start = cur.at
    cur.accept("but", "only")
    told = _told(cur) if cur.accept(*LEFT_OUT) else None
    if told is None or (told.first and len(made) > 1 and isinstance(made[-2], Work)):
        cur.at = start
        return None
    span, said = cur.span(start), cur.said(start)
    if told.last and isinstance(last, Work):
        place = replace(last.place, where=Where.TO_LAST, number=told.number)
        made[-1] = replace(last, place=place)
    elif told.last and isinstance(last, Repeat):
        made[-1] = replace(last, until=Until.TO_LAST, number=told.number)
    if told.first:
        made.insert(-1, Skip(span, said, Place(Where.NEXT, span, told.number)))
    return LeaveRest(span, said)


def _passed(cur: Cursor) -> Skip | None:
    """ "turn, leaving the first 3 sts unworked, sc in each st"."""
    start = cur.at
    told = _told(cur) if cur.accept("leave", "leaving") else None
    if told is None or not told.unworked or (told.last and "last" in cur.said(start).lower()):
        cur.at = start
        return None
    span = cur.span(start)
    return Skip(span, cur.said(start), Place(Where.NEXT, span, told.number))


def _told(cur: Cursor) -> _Told | None:
    """What stands behind the verb, taken; the cursor may be anywhere where there is none."""
    number: Num | None = None
    stitch = unworked = False
    lows: list[str] = []
    while not cur.done() and len(lows) < LONGEST and cur.low() not in (*STOPS, ","):
        low = cur.low()
        found = None if low in STITCH_NOUNS else cur.stitch()
        named = low in STITCH_NOUNS or found is not None
        if number is None and cur.kind() == "num":
            number = cur.number()
        elif named and not stitch:
            stitch = True
        elif low in UNWORKED:
            unworked = True
        elif low not in LITTLE:
            return None
        lows.append(low)
        cur.at += found.length if found is not None else 1
    words = set(lows)
    both = bool(BOTH & words and SIDES & words) or {"first", "last"} <= words
    first, last = both or bool(FIRST & words), both or bool(LAST & words)
    if number is None:
        number = ONE if stitch and (first or last) else None
    if number is None or not (first or last or unworked):
        return None
    return _Told(number, first, last or not first, unworked)
