"""So many stitches along an edge, "43 sc evenly across long edge of ribbing": the row below does
not tell where they go.
"""

from __future__ import annotations

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.tree import Num, Place, Unread, Where

EVENLY = ("evenly spaced", "evenly", "spaced evenly", "loosely")
ALONG = ("across", "along", "around", "down", "up", "on", "over", "in", "into")
WHICH = frozenset(
    ["the", "your", "this", "one", "each", "long", "longer", "short", "shorter", "side", "left",
     "right", "top", "bottom", "other", "opposite", "outer", "outside", "raw", "straight", "lower",
     "upper", "neck", "armhole", "front", "back", "row", "cuff", "brim", "ribbing", "band", "whole",
     "entire", "first", "second", "third", "fourth", "next", "last", "remaining", "slanted",
     "slanting", "sloping", "curved", "diagonal", "inner", "inside", "narrow", "wide", "unworked"]
)  # fmt: skip
EDGES = frozenset(["edge", "edges", "side", "sides", "ends", "opening"])
ROUND = ("around", "along", "across", "up", "down")
OPENINGS = frozenset(
    ["top", "bottom", "hem", "neck", "neckline", "armhole", "cuff", "brim", "hole", "border",
     "perimeter", "thumbhole", "waist", "ankle"]
)  # fmt: skip
"""Edges too, where stitches go around them."""
STARTED = tuple(
    f"{which}{chain}" for which in ("foundation", "starting", "beginning", "base", "original")
    for chain in ("", " ch", " chain")
)
"""The chain as the edge that the piece began with."""
LENGTHS = ("long", "short", "longer", "shorter")
LONGEST = 5
FARTHEST = 8
"""Words behind an edge that say what it is of."""


def along_edge(cur: Cursor, number: Num | None) -> Place | None:
    """The edge that so many stitches go along, taken; None (nothing taken) where no number is told,
    or no such words stand here.
    """
    if number is None or number.values[0] < MANY:
        return None
    start = cur.at
    cur.accept(*EVENLY)
    way = cur.low()
    if not cur.accept(*ALONG):
        cur.at = start
        return None
    each = cur.accept("each", "every")
    if each and cur.low(2) in LENGTHS:
        cur.accept("of the")
    sides = 2 if each and cur.low() in LENGTHS else 1
    all_of = cur.accept("of the four", "of the 4", "of four", "of all four") if each else False
    all_of = all_of or cur.accept("all four", "all 4", "the four", "the 4")
    sides = 4 if all_of else sides
    for _ in range(LONGEST):
        edge = cur.low() in EDGES or (way in ROUND and cur.low() in OPENINGS)
        edge = edge or cur.words("end of rows") > 0
        length = int(edge and cur.low(1) not in EDGES) or cur.any_words(STARTED)
        if length:
            cur.at += length
            _of_what(cur)
            _which_side(cur)
            number = Num((sides,))
            return Place(Where.ELSEWHERE, cur.span(start), number, "edge", text=cur.said(start))
        if cur.low() not in WHICH:
            break
        cur.at += 1
    cur.at = start
    return None


def _which_side(cur: Cursor) -> None:
    """Takes "along edge of ribbing", "around top of cuff" behind the ends of rows."""
    if cur.low() not in ROUND:
        return
    for ahead in range(1, LONGEST):
        low = cur.low(ahead)
        if low in EDGES or low in OPENINGS or low in ("ribbing", "band", "ribbed"):
            cur.at += ahead + 1
            _of_what(cur)
            return
        if low not in WHICH and low != "of":
            return


SIDES_UNTOLD = ("side", "edge", "of the sides", "of the edges", "of the side edges")


def edges_untold(cur: Cursor, start: int, number: Num | None) -> Unread | None:
    """ "18 sc along each side": so many, and nobody says how many sides there are; None (nothing
    taken) where they are told, or no such words stand here.
    """
    at = cur.at
    cur.accept(*EVENLY)
    told = number is not None and number.values[0] >= MANY and cur.accept(*ALONG)
    if told and cur.accept("each", "every") and cur.accept(*SIDES_UNTOLD):
        return Unread(cur.span(start), cur.said(start))
    cur.at = at
    return None


INTO = frozenset(["in", "into", "over", "on", "at", "along", "across"])
ENDS_OF = tuple(
    f"{the}{end} of" for the in ("the ", "") for end in ("end", "ends", "side", "sides", "edge")
)


def in_row_ends(cur: Cursor) -> Place | None:
    """The ends of so many rows, "in next 10 row ends", "in end of each of 10 rows", taken; None
    (nothing taken) where no such words stand here.
    """
    if cur.low() not in INTO:
        return None
    start = cur.at
    cur.at += 1
    ends = cur.accept(*ENDS_OF)
    while cur.accept("each of", "each", "every", "the", "next", "following", "first", "last"):
        pass
    number = cur.number() if cur.kind() == "num" else None
    cur.at += 1
    told = cur.accept("row ends", "row end", "row - ends", "ends of rows")
    if number is None or not (told or (ends and cur.accept("rows"))):
        cur.at = start
        return None
    return Place(Where.ELSEWHERE, cur.span(start), number, "edge", text=cur.said(start))


FREE = ("free", "unworked", "unused")
LEFT_FREE = tuple(f"{left}{free}" for left in ("left ", "") for free in FREE)


def stitches_left_free(cur: Cursor) -> Place | None:
    """Stitches that a row before left alone, "in each of the 7 free sts of toe", "in 7 sts left
    free", taken; None (nothing taken) where no such words stand here.
    """
    start = cur.at
    all_over = cur.accept("along", "across", "over")
    cur.accept("in", "into", "on")
    cur.accept("each of the", "each of", "each", "the")
    number = cur.number() if cur.kind() == "num" else None
    cur.at += number is not None
    before = number is not None and cur.accept(*FREE)
    found = cur.stitch() if cur.low() not in STITCHES else None
    cur.at += found.length if found is not None else cur.low() in STITCHES
    named = found is not None or cur.low(-1) in STITCHES
    if number is None or not named or not (before or cur.accept(*LEFT_FREE)):
        cur.at = start
        return None
    if cur.low() in ("of", "at", "on"):
        while cur.low() not in (*STOPS, "", "and", "then"):
            cur.at += 1
    number = Num((1,)) if all_over else number
    return Place(Where.ELSEWHERE, cur.span(start), number, "edge", text=cur.said(start))


STITCHES = ("st", "sts", "stitch", "stitches", "loop", "loops", "lps")
MANY = 6
"""Stitches: fewer may be of a corner or a group."""


def _of_what(cur: Cursor) -> None:
    """Takes "of the ribbing" behind an edge."""
    if cur.low() != "of":
        return
    at = cur.at
    for _ in range(FARTHEST):
        cur.at += 1
        if cur.low() in (*STOPS, ""):
            return
    cur.at = at
