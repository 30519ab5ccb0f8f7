"""The stitch in the middle of a row, where shawls, capes and toes of slippers grow: "1 sc in each
sc to the middle stitch, 3 sc in this", "sc in each, working 3 sc in the center one".
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.place_nouns import find_noun
from reader.pattern.tree import ONE, Act, Chain, Node, Num, Place, Shape, Where, Work
from reader.terms.stitches import Craft, Kind

SPOTS = frozenset({"center", "centre", "middle", "point", "peak", "tip"})
_INTO = ("in", "into", "on", "over", "at", "under")
ITSELF = tuple(
    f"{into} {this}{one}" for into in _INTO
    for this in ("this", "that", "it") for one in ("", " one", " stitch", " st", " same")
)
"""Behind stitches that go as far as the middle: that stitch."""


def in_center(cur: Cursor, made: Sequence[Node]) -> Place | None:
    """The "in the middle stitch", "in the point" that stands here, taken; behind stitches that go
    as far as there, "in this" too; None elsewhere.
    """
    if cur.book.craft is not Craft.CROCHET or cur.low() not in _INTO:
        return None
    start, last = cur.at, made[-1] if made else None
    to_spot = isinstance(last, Work) and last.place.where is Where.UNUSED
    length = cur.any_words(ITSELF) if to_spot else 0
    if length and cur.low(length) in ("", "and", "then", *STOPS):
        cur.at += length
        return Place(Where.NEXT, cur.span(start), text=cur.said(start))
    cur.at += 1
    cur.accept("the", "this")
    cur.accept("very", "exact")
    among = cur.words("one of the", 1) or cur.words("one of those", 1)
    works = [one for one in made if isinstance(one, Work)]
    goes_on = bool(works) and works[-1].place.where in (Where.EACH, Where.REST)
    if cur.low() not in SPOTS or (among and cur.kind(1 + among) == "num" and not goes_on):
        cur.at = start
        return None
    cur.at += 1
    grouped = cur.low() == "of" and not goes_on
    if _of_each(cur):
        if grouped:
            # "(Dc, ch 1, dc) in center of each group": the middles of groups below.
            cur.at = start
            return None
        text = f"{cur.said(start)} ({CORNER})"
        return Place(Where.EACH, cur.span(start), each=True, text=text)
    _which(cur)
    if cur.low() not in ("", "and", "then", "at", *STOPS):
        cur.at = start
        return None
    if cur.low() == "at":
        while cur.low() not in ("", *STOPS):
            cur.at += 1
    return Place(Where.NEXT, cur.span(start), text=cur.said(start))


CORNER = "corner"
"""Said of the middle one of several stitches in one place, as of those that turn a corner."""


def _of_each(cur: Cursor) -> bool:
    """Takes "of each 3 dc", "st of every group", where the row grows at several points."""
    at = cur.at
    if not cur.accept("one"):
        _noun(cur)
    if cur.accept("of each", "of every", "of all", "of each of", "of each of the", "of all the"):
        cur.accept("group of", "groups of", "set of", "cluster of")
        if cur.kind() == "num":
            cur.at += 1
            cur.accept("-")
            _noun(cur)
            cur.accept("group", "groups", "corner", "corners")
            return True
        if cur.accept("group", "groups", "increase", "widening", "corner", "point", "increases"):
            return True
    cur.at = at
    return False


def _which(cur: Cursor) -> None:
    """Takes "stitch", "one", "of the three", "sc of 3 sc" behind the middle."""
    if not cur.accept("one"):
        _noun(cur)
    at = cur.at
    if cur.accept("of"):
        cur.accept("the", "these", "those")
        if cur.kind() == "num":
            cur.at += 1
            _noun(cur)
        elif not cur.accept("row", "work", "back", "toe", "group", "shawl", "cape"):
            cur.at = at


def _noun(cur: Cursor) -> None:
    at = cur.at
    noun = find_noun(cur)
    if noun in ("sp", "ch", "tch", "group", "corner", "shell", "fan", "v-st"):
        cur.at = at


def grown_in_center(made: list[Node], node: Node) -> Node:
    """The stitches of the middle; where those before them go on to the row's end, these now go on
    to the middle and behind it: "1 sc in each sc, making 3 sc in the middle stitch". What goes into
    every so manieth of them tells of the whole row by itself.
    """
    if not isinstance(node, Work) or not (_of_center(node) or _every_so_many(node)):
        return node
    works = [one for one in made if not isinstance(one, Act | Chain)]
    last = works[-1] if works else None
    if not isinstance(last, Work):
        return node
    whole = last.place.where in (Where.EACH, Where.REST) and last.place.nth < 2
    alone = len(works) == 1 and last.place.where is Where.PLAIN and last.number is None
    if last.stitch.kind is not Kind.STITCH or not (whole or alone):
        return node
    if node.place.where is Where.EACH:
        if node.stitch == last.stitch:
            made.remove(last)
            return _gaining(node)
        return node
    place = replace(last.place, where=Where.UNUSED, noun="corner", number=Num((0,)))
    made[made.index(last)] = replace(last, place=place)
    return node


def _gaining(node: Work) -> Node:
    """Three and more in every so manieth as what the row gains by them; two as they are."""
    several = node.number.values[0] if node.number is not None else 1
    if several < 3 or node.place.nth < 2:
        return node
    return Shape(node.span, node.words, several - 1, ONE, 1, node.place.nth)


def _every_so_many(node: Work) -> bool:
    """Whether two go into every so manieth: "dc, with 2 in every third" is all of the row."""
    two = node.number is not None and node.number.values[0] > 1
    return two and node.place.where is Where.EACH and node.place.nth > 1


def _of_center(node: Work) -> bool:
    place, said = node.place, node.place.text.lower().split()
    one = place.where is Where.NEXT and place.number.values == (1,) and not place.each
    return one and not place.nth and bool(SPOTS & set(said[:4])) and place.noun == "st"
