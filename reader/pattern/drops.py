"""Loops let off the needle in knitting: "drop 1 yo", "dropping the overs", "dropping 2 of the
"overs"" -> Work, Shape.
"""

from __future__ import annotations

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.tree import ONE, Node, Num, Place, Shape, Where, Work
from reader.terms.forms import stitch_named
from reader.terms.stitches import Craft

ONE_LOOP = frozenset(["yo", "over", "yarnover", "yrn", "yfwd", "wrap"])
LOOPS = frozenset(["yos", "overs", "yarnovers", "wraps", "yo's"])
MADE = frozenset([*ONE_LOOP, *LOOPS, "loops"])
DROPS = ("drop", "dropping", "let drop", "letting drop", "slip off", "slipping off")


WRAPPED = ("wrapped yarn", "the wrapped yarn", "the wraps", "extra wraps", "the extra wraps")


def find_drop(cur: Cursor) -> Node | None:
    """The loops dropped here, taken; None (nothing taken) where none are.

    One loop is a stitch of the list; the overs of the row below are dropped all over the row.
    """
    if cur.book.craft is not Craft.KNITTING:
        return None
    start = cur.at
    if not cur.accept(*DROPS):
        return None
    spread = cur.low(-1).endswith("ing")
    if cur.accept(*WRAPPED):
        return _all_over(cur, start, None, False)
    lows: list[str] = []
    number: Num | None = None
    while not cur.done() and cur.low() not in STOPS and cur.kind() != "stars":
        if cur.kind() == "num" and number is None:
            number = cur.number()
        elif cur.kind() == "ord" and cur.low(1) == "of" and number is None:
            # "The second of each pair of overs".
            number = ONE
        if cur.low() != '"':
            lows.append(cur.low())
        cur.at += 1
    several = not {"loop", *ONE_LOOP} & set(lows)
    many, some = LOOPS & set(lows), "of" in lows and number is not None
    extra = {"extra", "additional"} & set(lows)
    if not MADE & set(lows) or ("loops" in lows and not (many or some or extra)):
        cur.at = start
        return None
    if spread or ((many or (extra and several)) and number is None) or some:
        each = number if some and number is not None else None
        return _all_over(cur, start, each, bool(extra))
    stitch = stitch_named("drop", Craft.KNITTING)
    place = Place(Where.PLAIN, cur.span(start))
    return Work(cur.span(start), cur.said(start), stitch, number or ONE, place) if stitch else None


def _all_over(cur: Cursor, start: int, each: Num | None, extra: bool) -> Node:
    """The overs of the row below, all of them or so many of each; of "extra" ones, where several
    lie side by side, nothing tells whether one stays.
    """
    span, words = cur.span(start), cur.said(start)
    if extra and each is None:
        return Shape(span, words, -1, ONE, of="extra yo")
    return Shape(span, words, -1, each or Num((0,)), of="yo")
