"""Stitches made anew in knitting: "make one", "make 3 in the next stitch", "pick up the loop
between and knit it" -> Work, Group.
"""

from __future__ import annotations

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.knitting_fabric import NOUNS, worked
from reader.pattern.overs import how_many
from reader.pattern.tree import ONE, Group, Node, Num, Place, Where, Work
from reader.terms.forms import stitch_named

LIFTS = (
    "pick up", "picking up", "lift", "lifting", "raise", "raising", "take up", "taking up", "pu",
)
EXTRA = frozenset(["extra", "additional", "another", "new"])
STRANDS = frozenset(["loop", "thread", "strand", "bar", "horizontal", "wool", "yarn", "running"])


def made_new(cur: Cursor, start: int) -> Node | None:
    """ "make one", "m 2": so many more."""
    if cur.accept("widen once", "widen one", "widen 1", "widen"):
        # By an over, or by knitting twice into a stitch: one more either way.
        return worked(cur, start, "m1", how_many(cur)) if cur.low() in (*STOPS, "", "and") else None
    several = _made_of_one(cur, start)
    if several is not None:
        return several
    one = cur.low(1) in ("a", "an", "another") and cur.low(2) in NOUNS
    if cur.low() not in ("make", "m", "making") or not (one or cur.kind(1) == "num"):
        return None
    number = ONE if one else cur.number(1)
    cur.at += 2
    if cur.accept(*NOUNS):
        pass
    elif cur.stitch() is not None and cur.low(-1).isdigit() and cur.low(-2) == "make":
        return None
    if cur.low() in ("by", "from", "out"):
        while not cur.done() and cur.low() not in STOPS:
            cur.at += 1
    _how_in_brackets(cur)
    times = how_many(cur)
    if times is not None and number is not None:
        number = Num(tuple(one * times.at(size) for size, one in enumerate(number.values)))
    return worked(cur, start, "m1", number)


def _made_of_one(cur: Cursor, start: int) -> Node | None:
    """ "Make 3 in the next stitch", "make three stitches out of one": so many of one."""
    number = cur.number(1) if cur.low() in ("make", "making") and cur.kind(1) == "num" else None
    if number is None or not 1 < number.values[0] < 8:
        return None
    cur.at += 2
    cur.accept(*NOUNS)
    cur.accept("out of", "in", "into", "from")
    out = cur.low(-1) in ("of", "in", "into", "from")
    if out and cur.accept("one", "1", "the next", "the first", "the last", "next", "the same"):
        cur.accept(*NOUNS)
        stitch = stitch_named("k", cur.book.craft)
        if stitch is not None and cur.low() in (*STOPS, "", "and"):
            span = cur.span(start)
            body = Work(span, cur.said(start), stitch, number, Place(Where.PLAIN, span))
            return Group(span, cur.said(start), (body,), Place(Where.NEXT, span))
    cur.at = start
    return None


def _how_in_brackets(cur: Cursor) -> None:
    """Takes "(by knitting into the front and back)", in which a new stitch's making is told."""
    if cur.low() != "(" or cur.low(1) not in ("by", "that", "viz", "taking", "picking"):
        return
    close = next((ahead for ahead in range(30) if cur.low(ahead) == ")"), 0)
    cur.at += close + 1 if close else 0


def raised(cur: Cursor, start: int) -> Node | None:
    """ "pick up the loop before the next stitch and knit into the back of it"."""
    if not cur.accept(*LIFTS):
        return None
    lows = []
    while not cur.done() and cur.low() not in STOPS and cur.kind() != "stars":
        lows.append(cur.low())
        cur.at += 1
    extra = EXTRA & set(lows[:3]) and set(NOUNS) & set(lows[:4])
    if lows[:1] in (["a"], ["one"], ["1"]) and set(lows[1:2]) & set(NOUNS):
        # "Raise a stitch by knitting the loop between".
        return worked(cur, start, "m1", None) if {"raise", "raising"} & {cur.lows[start]} else None
    if not extra and not STRANDS & set(lows[:4]):
        return None
    if not {"knit", "k", "purl", "p", "work"} & set(lows):
        # The knitting may stand behind a comma: "pick up the loop between, knit it".
        if cur.low() != "," or cur.low(1) not in ("knit", "k") or cur.low(2) not in ("it", "into"):
            return None
        cur.at += 1
        while not cur.done() and cur.low() not in STOPS:
            cur.at += 1
    return worked(cur, start, "m1", None)
