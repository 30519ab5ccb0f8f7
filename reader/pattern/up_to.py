"""How far an instruction goes: "to last 2 sts", "to 3 sts before end", "to marker", "as far as the
corner" -> Place.
"""

from __future__ import annotations

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.place_nouns import find_noun
from reader.pattern.place_words import (
    CHAIN_NOUNS,
    GROUP_NOUNS,
    LEFT_OVER,
    MARKERS,
    OF_ROW_BEFORE,
    ROW_ENDS,
    SPACE_NOUNS,
    TO_LAST,
)
from reader.pattern.tree import ONE, Num, Place, Where
from reader.terms.stitches import Craft

CHAIN_ENDS = tuple(
    f"{of} {chain}" for of in ("of", "of the", "on the", "of foundation", "of the foundation")
    for chain in ("ch", "chain", "chains", "foundation")
)
CORNERS = ("corner", "point", "tip", "marked")
VERBS = ("work", "make", "and", "then")


def to_last_of(cur: Cursor) -> Place | None:
    """ "to last 2 sts", "to 3 sts before end", "until 2 sts remain", "to marker"."""
    start = cur.at
    length = cur.any_words(TO_LAST)
    if length:
        cur.at += length
        number = _take_number(cur)
        noun = find_noun(cur) or "st"
        noun = "st" if cur.book.craft is Craft.KNITTING else noun
        at = cur.at
        if cur.accept("of", "before") and _marker(cur):
            return Place(Where.UNUSED, cur.span(start), number or ONE, "marker")
        cur.at = at
        if _of_a_group(cur):
            return Place(Where.TO_LAST, cur.span(start), number or ONE, noun, remaining=True)
        if _of_a_part(cur) or _before_a_part(cur):
            return Place(Where.UNUSED, cur.span(start), number or ONE, "marker")
        cur.accept(*ROW_ENDS, *CHAIN_ENDS)
        return Place(Where.TO_LAST, cur.span(start), number or ONE, noun)
    far = cur.accept("as far as", "up to")
    if far or cur.accept("across to", "to", "until", "till", "across until", "around until",
                         "across till", "around to", "even until"):
        found = _to_spot(cur, start, far)
        if found is not None:
            return found
    cur.at = start
    return None


def _take_number(cur: Cursor) -> Num | None:
    number = cur.number()
    if number is not None:
        cur.at += 1
    return number


def _to_spot(cur: Cursor, start: int, far: bool) -> Place | None:
    """What stands behind "to": stitches before the end, a marker, or a corner."""
    if _corner_ahead(cur, far):
        return Place(Where.UNUSED, cur.span(start), Num((0,)), "corner")
    number = _take_number(cur)
    if number is None and cur.low() in MIDDLES and cur.low(2) == "of":
        return None
    if number is None:
        return Place(Where.UNUSED, cur.span(start), Num((0,)), "marker") if _marker(cur) else None
    nth = cur.kind(-1) == "ord"
    noun = find_noun(cur) or "st"
    if cur.accept(*LEFT_OVER):
        if nth and noun == "sp":
            # "to 2nd loop from end": that loop is worked into, and one is left.
            number = Num(tuple(max(0, n - 1) for n in number.values))
        return Place(Where.TO_LAST, cur.span(start), number, noun)
    if cur.accept("before", "past", "after"):
        _marker(cur)
        return Place(Where.UNUSED, cur.span(start), number, "marker")
    return None


MIDDLES = ("center", "centre", "middle")


def _middle(cur: Cursor, far: bool) -> bool:
    """Whether the middle stitch of the row is meant, and not the middle of something in it."""
    if far or cur.low() not in MIDDLES:
        return far
    stitch = cur.stitch(1)
    at = 1 + (stitch.length if stitch else cur.low(1) in ("st", "stitch", "one", "sts"))
    of = cur.low(at) == "of" and (cur.low(at + 1) == "the") + 1
    return cur.low(at) in ("", *STOPS, "and", "then") or bool(of and cur.kind(at + of) == "num")


def _corner_ahead(cur: Cursor, far: bool) -> bool:
    """Takes "the center sc of next 3-sc group", "next corner", "point": a spot on the way."""
    at = cur.at
    cur.accept("the")
    cur.accept("next", "first", "last", "each")
    spot = cur.accept(*CORNERS) or (_middle(cur, far) and cur.accept(*MIDDLES))
    while spot and not cur.done() and cur.low() not in STOPS and cur.low() not in VERBS:
        if cur.low() in SPACE_NOUNS | CHAIN_NOUNS:
            spot = False
        cur.at += 1
    if not spot:
        cur.at = at
    return spot


def _marker(cur: Cursor) -> bool:
    at = cur.at
    cur.accept("the")
    cur.accept("next", "first", "1st", "2nd", "second", "last", "beg", "bor", "side")
    cur.accept("previous", "prev")
    if cur.accept(*MARKERS):
        cur.accept(*OF_ROW_BEFORE)
        return True
    cur.at = at
    return False


GROUPS = GROUP_NOUNS | {"section", "sections", "block", "blocks", "point", "points", "shell", "fan"}


def _of_a_group(cur: Cursor) -> bool:
    """Takes "of group", "of next sc-group", "on each 5-sc group": a section of the row, not all."""
    if cur.low() not in ("of", "on", "in"):
        return False
    for ahead in range(1, 7):
        if cur.low(ahead) in (*STOPS, ""):
            return False
        if cur.low(ahead) in GROUPS:
            cur.at += ahead + 1
            return True
    return False


def of_the_group(cur: Cursor) -> bool:
    """Takes "of the block", the section of the row in which each stitch is meant."""
    at = cur.at
    while cur.low() in ("of", "the", "that", "this", "same"):
        cur.at += 1
    if cur.low() in GROUPS and (cur.at > at or cur.low(-1) == "of"):
        cur.at += 1
        return True
    cur.at = at
    return False


PARTS = frozenset(["rib", "stripe", "section", "gusset", "panel", "cable"])


BEFORE = frozenset(
    ["instep", "heel", "gusset", "thumb", "center", "centre", "middle", "seam", "underarm", "sole"]
)


def _before_a_part(cur: Cursor) -> bool:
    """ "before instep": where a part of the row begins."""
    ahead = 1 + (cur.low(1) == "the")
    if cur.low() != "before" or cur.low(ahead) not in BEFORE:
        return False
    cur.at += ahead + 1
    cur.accept("st", "sts", "stitch", "stitches", "needle")
    return True


def _of_a_part(cur: Cursor) -> bool:
    """ "of the end of this broad rib": the end of a part of the row, wherever it lies."""
    if cur.low() != "of":
        return False
    for ahead in range(1, 8):
        if cur.low(ahead) in STOPS or cur.low(ahead) in ("row", "round", "needle", ""):
            return False
        if cur.low(ahead) in PARTS:
            cur.at += ahead + 1
            return True
    return False
