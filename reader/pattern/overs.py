"""Yarn overs in the words of two centuries: "thread over twice", "wool forward", "turn the thread
once round the needle", "bring the yarn in front" -> Work.
"""

from __future__ import annotations

from itertools import pairwise

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.knitting_fabric import worked
from reader.pattern.tree import Act, Deed, Node, Num

OVERS = (
    "wool fwd", "wl fwd", "w fwd", "wfwd", "yarn fwd", "yfwd", "cotton fwd", "thread fwd",
    "wl rd n", "w r n", "wrn", "y r n", "yrn", "wl o n", "w o n", "won", "yon", "y o n", "th o",
    "wrp", "w r p", "yrp", "y r p", "wl rd p", "wfd", "y fwd", "y f", "w f", "w fd", "wl f", "yf",
)  # fmt: skip
"""An over, cut short; figures or "twice" may follow."""
THREADS = frozenset(["yarn", "wool", "thread", "cotton", "silk"])
IN_FRONT = (
    "to front of pin", "to front of needle", "to the front of the pin",
    "to the front of the needle",
    "to front of the pin", "to front of the needle", "in front of the pin", "in front of pin",
    "in front", "to front", "to the front", "before the needle", "before needle", "before the pin",
    "in front of the needle", "in front of needle", "in front of the work", "between the needles",
    "between needles",
)  # fmt: skip
"""The yarn between the needles: an over where a knitted stitch follows."""
TURNS = ("turn", "throw", "put", "pass", "bring", "wind", "lay", "wrap", "take", "carry", "slip",
         "turning", "throwing", "putting", "passing", "bringing", "winding", "laying", "wrapping",
         "taking", "carrying")  # fmt: skip
FORWARD = ("forward", "forwards", "fwd", "over")
AROUND = ("round", "around", "over", "about")


def find_over(cur: Cursor, start: int) -> Node | None:
    """The over that stands here, taken; None (nothing taken) when none does."""
    for reading in (_manner, _over, _in_front, _round_needle, _unnamed):
        node = reading(cur, start)
        if node is not None:
            return node
        cur.at = start
    return None


def _thread(cur: Cursor) -> bool:
    """Takes "bringing the wool", "yarn": the thread that is moved, with its verb."""
    if cur.accept(*TURNS) and cur.low(-1).endswith("ing") and cur.low(-2) == ",":
        # "Knit each stitch, putting the wool round twice": the manner of it.
        return False
    cur.accept("the", "your")
    if cur.low() not in THREADS:
        return False
    cur.at += 1
    return True


def _manner(cur: Cursor, start: int) -> Node | None:
    """ "Knit each stitch, throwing the wool 3 times round the pin": how it is done, and no over."""
    if cur.low(-1) != "," or not cur.low().endswith("ing") or not cur.accept(*TURNS):
        return None
    lows: list[str] = []
    while not cur.done() and cur.low() not in STOPS:
        lows.append(cur.low())
        cur.at += 1
    needle = {"needle", "pin", "needles", "pins"} & set(lows)
    twice = {"twice", "times", "thrice", "double", "extra"} & set(lows)
    if not THREADS & set(lows) or not needle or not twice:
        return None
    return Act(cur.span(start), cur.said(start), Deed.NOTE)


def _forward(cur: Cursor, start: int) -> bool:
    """Takes "bring forward the thread"."""
    cur.at = start
    if not cur.accept(*TURNS) or not cur.accept("forward the", "forward", "over the"):
        return False
    cur.at += 1
    return cur.low(-1) in THREADS


def _round_needle(cur: Cursor, start: int) -> Node | None:
    """ "turn the thread twice round the needle", "yarn round needle 3 times"."""
    if not _thread(cur):
        return None
    number = how_many(cur) if cur.kind() == "times" or cur.low(1) == "times" else None
    cur.accept("quite", "right", "once", "well")
    if cur.low() not in (*AROUND, "on"):
        return None
    cur.at += 1
    cur.accept("the", "right", "right hand", "your", "the right", "the right hand")
    named = cur.accept("needle", "pin", "hand needle", "hand pin")
    # "Pass the thread twice round, slip 1": the needle goes unnamed.
    if not named and (number is None or cur.low() not in (*STOPS, "and")):
        return None
    return worked(cur, start, "yo", number or how_many(cur))


def how_many(cur: Cursor) -> Num | None:
    """The "twice", "3 times" or "2" that stands here, taken."""
    number = cur.number()
    if cur.kind() == "times":
        cur.at += 1
        return number
    if cur.kind() == "num" and cur.low(1) in ("times", "time"):
        cur.at += 2
        return number
    if cur.kind() == "num" and cur.low(1) in (*STOPS, ""):
        cur.at += 1
        return number
    return None


def _over(cur: Cursor, start: int) -> Node | None:
    if cur.accept(*OVERS) or (_thread(cur) and cur.accept(*FORWARD)) or _forward(cur, start):
        if _comes_back(cur) or _came_back(cur, start):
            return Act(cur.span(start), cur.said(start), Deed.NOTE)
        cur.accept("the needle", "needle", "the pin", "pin", "again")
        number = how_many(cur)
        cur.accept("to increase", "to make a loop", "to make a stitch")
        cur.accept("to make 1", "to make a st", "to make one")
        return worked(cur, start, "yo", number)
    cur.at = start
    if cur.kind() == "num" and cur.low(1) in ("over", "overs") and cur.low(2) in (*STOPS, ""):
        number = cur.number()
        cur.at += 2
        return worked(cur, start, "yo", number)
    if cur.low() not in ("o", "over") or cur.low(-1) not in (*STOPS, "", "*", "and", "with"):
        return None
    cur.at += 1
    number = how_many(cur)
    if cur.low() not in (*STOPS, "", "and", "n", "narrow", "alternately"):
        return None
    return worked(cur, start, "yo", number, cur.low(-1) in ("times", "twice"))


KNITTED = frozenset(["knit", "k", "narrow", "n", "k2tog", "take", "make", "slip", "sl"])


def _unnamed(cur: Cursor, start: int) -> Node | None:
    """ "turn over twice, knit two together": the thread goes unnamed; nothing is turned, since the
    row is knitted on, and nothing passed over, since no stitch waits.
    """
    verb = cur.low()
    if not cur.accept("turn over", "throw over", "put over", "turn twice over"):
        return None
    number = Num((2,)) if cur.low(-2) == "twice" else how_many(cur)
    slipped = {"sl", "slip"} & {one.low for one in cur.tokens[max(0, start - 7) : start]}
    ahead = 0
    while cur.low(ahead) in (*STOPS, "and", "then") and cur.low(ahead):
        ahead += 1
    goes_on = cur.low(ahead) in KNITTED or (number is not None and cur.low(ahead) in PURLS)
    if not goes_on or (slipped and (verb != "turn" or makes_by_name(cur))):
        return None
    return worked(cur, start, "yo", number)


def makes_by_name(cur: Cursor) -> bool:
    """Whether the row calls its overs "make one", so that "slip one, knit one, turn over" is none:
    the slipped stitch goes over.
    """
    return any(one.low in ("make", "making", "m1") for one in cur.tokens)


def _in_front(cur: Cursor, start: int) -> Node | None:
    """ "bring the thread in front, slip 1, knit 2 together": an over, since knitting follows."""
    if not _thread(cur) or not cur.accept(*IN_FRONT) or _comes_back(cur):
        return None
    ahead = 0
    while cur.low(ahead) in (",", "and", "then"):
        ahead += 1
    narrows = cur.low(ahead) in PURLS and {"together", "tog"} & {cur.low(ahead + n) for n in (2, 3)}
    if narrows or (cur.low() == "." and cur.low(1) in ("repeat", "rep")):
        # Before two purled together, and where the list begins again, it is told as an over only.
        return worked(cur, start, "yo", None)
    slipped = cur.low(ahead) in ("sl", "slip") and cur.low(ahead + 1) in ("1", "one")
    ahead += (2 + (cur.low(ahead + 2) == ",")) * slipped
    together = not slipped or cur.low(ahead + 2) in ("together", "tog") or cur.low(ahead) != "k"
    if cur.low(ahead) not in ("knit", "k", "narrow", "n", "k2tog", "knitting") or not together:
        return None
    return worked(cur, start, "yo", None)


def _comes_back(cur: Cursor) -> bool:
    """Whether the yarn only goes to the front while stitches are slipped or purled, and back."""
    ahead = 0
    while cur.low(ahead) in (*STOPS, "and", "then") and cur.low(ahead):
        ahead += 1
    slipped = cur.low(ahead) in ("sl", "slip", "s")
    if not slipped and cur.low(ahead) not in PURLS:
        return False
    lows = [cur.low(ahead + n) for n in range(12)]
    if any(low in ("yb", "ybk", "ytb", "yab") for low in lows[:6]):
        return True
    if not slipped and {"together", "tog"} & set(lows[:4]):
        return False
    return any(one in THREADS and after == "back" for one, after in pairwise(lows))


BACK = ("yb", "ybk", "ytb", "yab", "wb", "wbk")


def _came_back(cur: Cursor, start: int) -> bool:
    """Whether the yarn only comes to the front again behind a stitch that was slipped with it at
    the back, "yb, sl 1, yf".
    """
    lows = [one.low for one in cur.tokens[max(0, start - 7) : start]]
    behind = next((lows[at + 1 :] for at, low in enumerate(lows) if low in BACK), [])
    return bool({"sl", "slip"} & set(behind)) and not {"k", "p", "knit", "purl"} & set(behind)


PURLS = ("p", "purl", "pearl", "seam")
