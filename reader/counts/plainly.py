"""Rows so plainly told that their arithmetic leaves no doubt: only stitches into stitches, or a net
told square by square.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from reader.counts.repeating import fixed
from reader.pattern.tree import Act, Chain, Edge, Group, Node, Repeat, Shape, Skip, Work
from reader.pattern.tree import Where as Spot
from reader.terms.stitches import Craft

ATTACHED = re.compile(r"\b(?:attach|join)\b.*\bin (?:the )?next\b", re.IGNORECASE)
"""Yarn fastened to a stitch that may or may not be worked into."""

SPOTS = (
    Spot.NEXT, Spot.PLAIN, Spot.EACH, Spot.REST, Spot.TO_LAST, Spot.FIRST, Spot.LAST,
)  # fmt: skip
"""Places told by stitches alone."""


def plainly_read(nodes: Sequence[Node]) -> bool:
    """Only stitches into stitches: the rows whose arithmetic leaves no doubt."""
    for one in nodes:
        if isinstance(one, Act) and ATTACHED.search(one.words):
            return False
        if isinstance(one, Work):
            if one.place.where not in SPOTS or one.place.noun in ("sp", "tch", "ch", "group"):
                return False
        elif isinstance(one, Repeat):
            if not plainly_read(one.body) or (one.ending and not plainly_read(one.ending)):
                return False
        elif isinstance(one, Shape | Edge) or (isinstance(one, Group) and not _in_one(one)):
            return False
    return any(isinstance(one, Work | Repeat | Group) for one in nodes)


def _in_one(group: Group) -> bool:
    """Whether several are knitted into one stitch, "(k 1, p 1) in each st"."""
    into = group.place.where in SPOTS and group.place.where is not Spot.PLAIN
    return into and group.place.noun == "st" and all(
        isinstance(one, Work) and one.stitch.craft is Craft.KNITTING
        and one.place.where is Spot.PLAIN
        for one in group.body
    )  # fmt: skip


def told_in_squares(nodes: Sequence[Node]) -> bool:
    """Whether a row tells of nothing but stitches side by side and chains over as many that are
    missed, so that every stitch and chain below is accounted for.
    """
    over = 0
    for one in nodes:
        if isinstance(one, Repeat):
            if one.ending or not fixed(one) or not told_in_squares(one.body):
                return False
            over += 1
        elif isinstance(one, Work) and (one.place.where is not Spot.PLAIN or one.stitch.takes != 1):
            return False
        elif isinstance(one, Skip):
            over += one.place.where is Spot.NEXT and one.place.noun == "st"
        elif not isinstance(one, Act | Chain | Work):
            return False
    return over > 0


def told_throughout(nodes: Sequence[Node]) -> bool:
    """Whether a knitted row tells every stitch by its number, so that it fits one number of
    stitches below and no other.
    """
    works = [one for one in nodes if not isinstance(one, Act)]
    return bool(works) and all(
        (isinstance(one, Repeat) and fixed(one) and not one.ending and told_throughout(one.body))
        or (
            isinstance(one, Work) and one.place.where is Spot.PLAIN
            and one.stitch.craft is Craft.KNITTING
            and (one.number is not None or one.stitch.takes != 1)
        )
        for one in works
    )  # fmt: skip
