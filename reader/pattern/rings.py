"""Rings that a round begins with: "magic ring", "a magic circle of 6 sc" -> Start; "sl st into
ring" behind a chain -> the join that closes it.
"""

from __future__ import annotations

from collections.abc import Sequence

from reader.pattern.cursor import STOPS, Cursor
from reader.pattern.phrasing import take_phrase
from reader.pattern.tree import Act, Chain, Deed, Node, Num, Start, Where, Work
from reader.terms.stitches import Craft, Kind

RINGS = (
    "magic ring", "mr", "magic circle", "magic loop", "make a magic ring", "make magic ring",
    "using a magic loop",
    "with a magic ring", "make a ring", "adjustable ring", "make an adjustable ring",
    "create a magic ring",
    "start with a magic ring", "form a ring",
)  # fmt: skip


def find_ring(cur: Cursor, start: int) -> Node | None:
    """The ring that is made here, taken; None (nothing taken) where none is."""
    length = cur.any_words(RINGS)
    counted = length > 0 and cur.low(length) in ("of", "with", ":")
    if counted and cur.kind(length + 1) == "num" and cur.stitch(length + 2) is not None:
        # "a magic circle of 6 sc"
        cur.at += length + 1
        return Start(cur.span(start), cur.said(start), "ring", Num((0,)))
    if length and cur.kind(length) == "num" and cur.stitch(length + 1) is not None:
        # "MR 6 sc": the stitches behind it are worked.
        cur.at += length
        return Start(cur.span(start), cur.said(start), "ring", Num((0,)))
    short = cur.kind(length) == "num" and cur.low(length + 1) in (*STOPS, "")
    if length and short and cur.book.craft is Craft.CROCHET:
        # "MR 6": so many plain stitches in it.
        cur.at += length
        return Start(cur.span(start), cur.said(start), "ring", Num((0,)))
    if length and any(cur.low(n) == "and" for n in range(length, length + 3)):
        # "a magic circle and crochet six into it": what follows is worked.
        cur.at += length
        return Start(cur.span(start), cur.said(start), "ring", Num((0,)))
    if length:
        take_phrase(cur)
        return Start(cur.span(start), cur.said(start), "ring", Num((0,)))
    return None


def told_in_ring(cur: Cursor) -> bool:
    """Whether "11 times into the ring" stands here, behind a list that is all worked into it."""
    into = cur.low(2) in ("in", "into", "under", "through", "inside")
    return into and {cur.low(3), cur.low(4)} & {"ring", "circle", "round"} != set()


def of_ring(made: Sequence[Node]) -> int:
    """Where in a list that begins it is repeated into the ring: behind the chain of the round, at a
    stitch, or at the chain before it where the list ends with a stitch.
    """
    works = [at for at, one in enumerate(made) if isinstance(one, Work)]
    first = works[0] if works else 0
    chained = first > 1 and isinstance(made[first - 1], Chain) and isinstance(made[-1], Work)
    return first - chained


def closed(node: Node | None, made: Sequence[Node]) -> Node | None:
    """ "Ch 4, sl st into ring": the slip stitch that makes a ring of the first chain; other nodes
    as they are.
    """
    slips = isinstance(node, Work) and node.stitch.kind is Kind.SLIP
    if not isinstance(node, Work) or not slips or node.place.where is not Where.RING:
        return node
    first = [one for one in made if not isinstance(one, Act)]
    if len(first) != 1 or first[0] is not made[-1] or not isinstance(first[0], Chain):
        return node
    return Act(node.span, node.words, Deed.JOIN, "ring")
