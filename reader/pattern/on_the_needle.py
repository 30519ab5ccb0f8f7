"""How far a stitch is worked, told by what is on the needle then: "k until there are 15 sts on
right-hand needle".
"""

from __future__ import annotations

from reader.pattern.cursor import Cursor
from reader.pattern.tree import Edge, Node, Num, Where, Work

UNTIL = ("until there are", "till there are", "until you have", "till you have")
RIGHT = tuple(
    f"on {the}right{hand} {needle}"
    for the in ("", "the ") for hand in ("", " hand") for needle in ("needle", "needles", "pin")
)
BEHIND = tuple(
    f"after {the}{off}{sts}"
    for the in ("", "the ")
    for off in ("bound off", "cast off", "bind off", "bound-off", "cast-off")
    for sts in ("", " sts", " stitches")
)


def until_on_needle(cur: Cursor, made: list[Node]) -> Num | None:
    """How many more that makes, taken; None (nothing taken) where no such words stand here, or what
    is on the needle already is no plain number.
    """
    at = cur.at
    if cur.accept(*UNTIL) and cur.kind() == "num":
        number = cur.number()
        cur.at += 1
        cur.accept("sts", "stitches", "st")
        before = _there(made)
        if cur.accept(*RIGHT) and number is not None and before is not None:
            cur.accept(*BEHIND)
            more = tuple(one - before for one in number.values)
            if min(more) > 0:
                return Num(more)
    cur.at = at
    return None


def _there(made: list[Node]) -> int | None:
    """The stitches worked since some were bound off, or since the row began."""
    there = 0
    for one in reversed(made):
        if isinstance(one, Edge):
            return None if one.cast_on else there
        if isinstance(one, Work):
            numbers = set(one.number.values) if one.number else {1}
            if one.place.where is not Where.PLAIN or len(numbers) > 1:
                return None
            there += one.stitch.makes * numbers.pop()
    return there
