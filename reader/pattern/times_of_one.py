"""An increase or decrease with its place that is worked several times on end, "dec over first 2 sts
twice", "2 sc in next st 3 times" -> a repeat of it alone, where the list before cannot be meant.
"""

from __future__ import annotations

from dataclasses import replace

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.tree import ONE, Act, Chain, Node, Num, Place, Repeat, Until, Where, Work
from reader.terms.stitches import Craft

OPEN = (Where.EACH, Where.REST, Where.TO_LAST)
SPOTS = (Where.NEXT, Where.FIRST, Where.LAST)


def times_of_one(cur: Cursor, node: Node | None, made: list[Node]) -> Node | None:
    """The stitch so many times, the words taken; as it is where none stand here, or the whole list
    may be worked so often.
    """
    if cur.book.craft is not Craft.CROCHET or not isinstance(node, Work) or not _changes(node):
        return node
    if node.place.where not in SPOTS or node.by is not None:
        return node
    listed = [one for one in made if not isinstance(one, Act | Chain)]
    before = [one.place.where for one in listed if isinstance(one, Work)]
    alone = not listed or node.place.where is not Where.NEXT
    if not alone and not ({*OPEN, Where.FIRST} & set(before)):
        return node
    times = _times(cur)
    if times is None:
        return node
    body = (replace(node, place=_on_from(node)),)
    return Repeat(node.span, node.words, body, Until.TIMES, times)


def _changes(node: Work) -> bool:
    """Whether a stitch in one place changes how many there are."""
    several = node.number is not None and node.number.values[0] > 1
    return node.stitch.takes != node.stitch.makes or (several and node.place.number == ONE)


def _on_from(node: Work) -> Place:
    """ "Over last 4 sts" twice is over two of them, and two more; "over first 2 sts" and on."""
    place, takes = node.place, node.stitch.takes
    number = place.number
    if takes > 1 and number.values[0] > takes:
        number = Num((takes,))
    return replace(place, where=Where.NEXT, number=number)


def _times(cur: Cursor) -> Num | None:
    """The "twice", "3 times" that stands directly behind, taken; None where none does."""
    counted = cur.kind() == "num" and cur.low(1) in ("times", "time")
    length = 1 if cur.kind() == "times" else 2 if counted else 0
    if not length or cur.low(length) not in (*STOPS, "", "and", "then", ")", "]", "*"):
        return None
    number = cur.number()
    cur.at += length
    return number
