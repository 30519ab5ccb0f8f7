"""How far a knitted list goes, told in stitches: "(k1, p1) over next 6 sts", "repeat from * across
32 sts" -> as often as it goes into them.
"""

from __future__ import annotations

from collections.abc import Sequence

from reader.pattern.cursor import Cursor
from reader.pattern.tree import Act, Node, Num, Repeat, Until, Work
from reader.terms.stitches import Craft

OVER = ("over the", "over", "across the", "across", "for the", "for", "on the", "on")
WHICH = ("next", "first", "1st", "last", "following", "foll", "center", "centre")


def over_so_many(cur: Cursor, start: int, body: Sequence[Node]) -> Repeat | None:
    """ "(k1, p1) over next 6 sts", "*k1, p1* for 16 sts": a knitted list as often as it goes into
    them; None (nothing taken) where no such words stand here, or it does not go into them.
    """
    at, knits = cur.at, cur.book.craft is Craft.KNITTING
    over = knits and cur.accept(*OVER)
    cur.accept(*WHICH)
    number = cur.number() if cur.kind() == "num" else None
    works = [one for one in body if isinstance(one, Work)]
    takes = sum(one.stitch.takes * (one.number.values[0] if one.number else 1) for one in works)
    plain = all(isinstance(one, Act | Work) for one in body) and takes > 0
    if not over or not plain or number is None or cur.low(1) not in ("sts", "stitches"):
        cur.at = at
        return None
    if any(value % takes for value in number.values):
        cur.at = at
        return None
    cur.at += 2
    times = Num(tuple(value // takes for value in number.values))
    return Repeat(cur.span(start), cur.said(start), tuple(body), Until.TIMES, times)


def told_in_stitches(cur: Cursor) -> bool:
    """Whether "over the next 32 sts" stands here, in a knitted row; nothing is taken."""
    ahead = cur.any_words(OVER) if cur.book.craft is Craft.KNITTING else 0
    if not ahead:
        return False
    ahead += cur.any_words(WHICH, ahead)
    return cur.kind(ahead) == "num" and cur.low(ahead + 1) in ("sts", "stitches")
