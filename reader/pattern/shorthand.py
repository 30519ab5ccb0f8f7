"""The shortest hand of toy and practice patterns: "in 6" for six increases, "slk" for the slip knot
-> Work, Act.
"""

from __future__ import annotations

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.tree import ONE, Act, Deed, Node, Place, Where, Work
from reader.terms.forms import stitch_named
from reader.terms.stitches import Craft, Kind

OPENS = ("", ",", "(", "[", ";", "*")
CLOSES = (*STOPS, "", "*")
KNOTS = (
    "slip knot", "slipknot", "slip - knot", "slk", "sl knot", "slip loop", "running knot",
    "slip noose",
)  # fmt: skip


def find_shorthand(cur: Cursor) -> Node | None:
    """What stands here in short hand, taken; None (nothing taken) when nothing does."""
    start = cur.at
    slips = cur.low() == "slip" and cur.book.craft is Craft.CROCHET
    stitch = stitch_named("sl st", Craft.CROCHET)
    if slips and stitch and cur.kind(1) == "num" and cur.low(2) in ("sts", "stitches"):
        # "slip 11 stitches"
        place = Place(Where.NEXT, cur.span(start), cur.number(1) or ONE, each=True)
        cur.at += 3
        return Work(cur.span(start), cur.said(start), stitch, None, place)
    if cur.book.craft is Craft.CROCHET and cur.accept(*KNOTS):
        cur.accept("on hook", "on the hook", "on your hook")
        return Act(cur.span(start), cur.said(start), Deed.START)
    return _short_increase(cur, start) or _plain_number(cur, start)


CHANGES = (Kind.INCREASE, Kind.DECREASE)
RING_ENDS = ("mr", "mc", "ring", "circle", "loop")


def _plain_number(cur: Cursor, start: int) -> Work | None:
    """ "(2, inc) x 6", "5, inc x 3, 9", "MR 6": a number alone is so many plain stitches, in a list
    that else names only increases and decreases, alone in its row, or behind a ring.
    """
    if cur.book.craft is not Craft.CROCHET or cur.kind() != "num" or cur.low(1) not in CLOSES:
        return None
    stitch, number = stitch_named("sc", Craft.CROCHET), cur.number()
    ringed = cur.low(-1) in RING_ENDS
    alone = cur.at == 0 and not cur.text[: cur.peek().start].strip() and not cur.low(2)
    listed = alone or (cur.low(-1) in OPENS and (_only_changes(cur) or _only_places(cur)))
    if stitch is None or not (ringed or listed):
        return None
    cur.at += 1
    here = cur.span(start)
    place = Place(Where.RING, here, noun="ring") if ringed else Place(Where.PLAIN, here)
    return Work(here, cur.said(start), stitch, number, place)


def _only_changes(cur: Cursor) -> bool:
    """Whether increases and decreases are the only stitches that the list names."""
    found = [cur.stitch(at - cur.at) for at in range(len(cur.tokens))]
    kinds = [one.stitch.kind for one in found if one is not None]
    return bool(kinds) and all(kind in CHANGES for kind in kinds)


def _only_places(cur: Cursor) -> bool:
    """Whether the list names no stitch at all, only numbers and places: "(1, 2 in next) x 6"."""
    spots = range(len(cur.tokens))
    if any(cur.stitch(at - cur.at) is not None for at in spots):
        return False
    behind = ("in", "into", "tog", "together")
    return any(cur.tokens[at].kind == "num" and cur.lows[at + 1] in behind for at in spots[:-1])


def _short_increase(cur: Cursor, start: int) -> Work | None:
    """ "in" where a stitch is awaited: at the beginning of an item that a number or a mark ends."""
    awaited = cur.low() == "in" and cur.book.craft is Craft.CROCHET and cur.low(-1) in OPENS
    times = awaited and cur.low(1) in ("x", "*") and cur.kind(2) == "num"
    at = 2 if times else 1
    counted = cur.kind(at) == "num" and cur.low(at + 1) in CLOSES
    stitch = stitch_named("inc", Craft.CROCHET)
    bare = cur.low(1) in (",", ")", "]") or (not cur.low(1) and cur.at > 0)
    if not awaited or stitch is None or not (counted or bare):
        return None
    number = cur.number(at) if counted else None
    cur.at += at + 1 if counted else 1
    place = Place(Where.PLAIN, cur.span(start))
    return Work(cur.span(start), cur.said(start), stitch, number, place)
