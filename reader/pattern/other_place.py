"""A stitch in another place, "dc in 4th ch from hook and in each ch across", or in as many as there
are of it, "4 dc on dc".
"""

from __future__ import annotations

import re
from dataclasses import replace

from reader.pattern.cursor import Cursor
from reader.pattern.places import find_place
from reader.pattern.tree import ONE, Act, Chain, Group, Node, Place, Where, Work
from reader.terms.stitches import Craft, Kind


def in_other_place(cur: Cursor, start: int, made: list[Node]) -> Node | None:
    """ "and in each ch across": the stitch before, in another place."""
    if cur.low() == "all" and cur.low(1) in ("in", "into"):
        # "ch 1, 2 dc, all in that space"
        cur.at += 1
    each = cur.low() in ("each", "every") and cur.book.craft is Craft.CROCHET
    # "in 2nd ch from hook and next 3 ch"
    each = each or _and_next(cur)
    if not each and cur.low() not in ("in", "into", "on", "across", "around", "over", "to"):
        return None
    last = next((one for one in reversed(made) if isinstance(one, Work)), None)
    place = find_place(cur)
    if place is not None and made and isinstance(made[-1], Group) and place.where is Where.EACH:
        # "(puff, ch 1, puff) in same sp and in each sp around"
        return replace(made[-1], span=cur.span(start), words=cur.said(start), place=place)
    if last is None or place is None or place.where is Where.PLAIN:
        return None
    if last is made[-1] and last.place.where is Where.PLAIN and cur.tokens[start - 1].low == ",":
        # "1 tr, on tr of last round": the comma parts a stitch from its place.
        made.pop()
        return replace(last, place=place)
    told = len(made) > 1 and made[-2] is last and isinstance(made[-1], Act)
    if told and last.place.where is Where.PLAIN and made[-1].words.endswith(")"):
        # "d tr (3 times over needle) in next sc": the bracket parts a stitch from its place.
        words = f"{last.words} {made[-1].words} {cur.said(start)}"
        del made[-2:]
        return replace(last, place=place, words=words)
    whole = place.each or place.where is Where.REST
    several = _several_in_each(last, place, made)
    return replace(
        last,
        span=cur.span(start),
        words=cur.said(start),
        number=last.number if several or not whole else None,
        place=place,
    )


def _and_next(cur: Cursor) -> bool:
    """Whether "next 3 ch" stands here behind "and"; a "the" before it is passed over."""
    the = cur.low() == "the"
    here = cur.low(the) == "next" and cur.kind(1 + the) == "num" and cur.low(-1) in ("and", "&")
    cur.at += here and the
    return here


def _several_in_each(last: Work, place: Place, made: list[Node]) -> bool:
    """ "2 dc in next dc and in each dc around": two in each."""
    every = place.where is Where.EACH or (
        place.where is Where.REST and place.text.startswith("every st")
    )
    if not every or last.place.each or last.number is None or last.place.number != ONE:
        return False
    return last.place.where in (Where.NEXT, Where.FIRST) or (
        last.place.where is Where.SAME and _first_of_row(last, made, place.noun == "sp")
    )


def _first_of_row(work: Work, made: list[Node], opening: bool) -> bool:
    """Whether a stitch is the first of its row, behind slip stitches to it and one chain at most
    that is no stitch; of spaces, each of which takes several, behind any chain.
    """
    before = [
        one for one in made[: made.index(work)]
        if not (isinstance(one, Work) and one.stitch.kind is Kind.SLIP)
    ]
    chains = [one for one in before if isinstance(one, Chain)]
    low = all(one.number.values[0] < TALL and not one.counts for one in chains)
    return (low or opening) and all(isinstance(one, Chain | Act) for one in before)


TALL = 3
"""So many chains may stand for a stitch of their own."""


ON_STITCHES = re.compile(
    r"^(?:on|upon|over) (?:the )?(?:same )?"
    r"(?:[hds]? ?c|tr|tc|long|trebles?|doubles?|sts|stitches)$",
    re.IGNORECASE,
)


def on_as_many(node: Node | None) -> Node | None:
    """ "4 dc on dc": one on each of as many; other nodes as they are."""
    if not isinstance(node, Work) or node.number is None or node.place.where is not Where.NEXT:
        return node
    if node.number == ONE or node.place.number != ONE or not ON_STITCHES.match(node.place.text):
        return node
    place = replace(node.place, number=node.number, each=True)
    return replace(node, number=ONE, place=place)
