"""How often before what: "twice 2 sc together", "3 times 2 sc in next st", "6 times: 1 sc, 1 inc"
-> Repeat.
"""

from __future__ import annotations

from collections.abc import Callable

from reader.pattern.cursor import Cursor
from reader.pattern.tokens import Token
from reader.pattern.tree import Act, Node, Repeat, Until, Work
from reader.terms.stitches import Craft

BEGINS = ("", ",", ";", ".", ":", "then", "and", "work", "=", "—", "(")
"""What stands before such a number of times."""
ENDS = (",", ".", ";", "(", "=", "and", "then", "—")
ALL_OF = (".", ";", "=", "(")


def times_first(cur: Cursor, read: Callable[[list[Token]], tuple[Node, ...]]) -> Node | None:
    """The instruction with its number of times, taken; None (nothing taken) where none stands
    here. read: tokens of a stretch -> its instructions.
    """
    if cur.book.craft is not Craft.CROCHET or cur.low(-1) not in BEGINS:
        return None
    start, number = cur.at, cur.number()
    if number is None or cur.kind() not in ("num", "times"):
        return None
    if cur.kind() == "num" and cur.low(1) not in ("times", "x"):
        return None
    told = 1 if cur.kind() == "times" else 2
    everything = cur.low(told) == ":"
    told += everything + (cur.low(told + everything) in ("work", "make", "crochet"))
    item = cur.kind(told) == "num" and cur.stitch(told + 1) is not None
    if not item and cur.stitch(told) is None:
        return None
    if cur.kind() == "num" and cur.low(1) == "x" and not item:
        # "6 x inc" is six of them.
        return None
    cur.at += told
    once = _read(cur, ENDS, read)
    works = [one for one in once if isinstance(one, Work)]
    if len(works) != 1 or len(works) != len(once):
        cur.at = start
        return None
    plain = works[0].stitch.takes == 1 and works[0].stitch.makes == 1 and not works[0].place.text
    if everything or plain:
        cur.at = start + told
        once = _read(cur, ALL_OF, read)
        if not all(isinstance(one, Work | Act) for one in once):
            cur.at = start
            return None
    return Repeat(cur.span(start), cur.said(start), once, Until.TIMES, number)


def _read(
    cur: Cursor, ends: tuple[str, ...], read: Callable[[list[Token]], tuple[Node, ...]]
) -> tuple[Node, ...]:
    """The instructions up to one of the marks, taken."""
    at = cur.at
    while not cur.done() and cur.low() not in ends and cur.kind() != "stars":
        cur.at += 1
    return read(cur.tokens[at : cur.at])
