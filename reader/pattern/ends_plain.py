"""A knitted row whose last word is a bare stitch behind a word of ending, "k1, ssk, end k", "...,
finish with knit" -> that stitch worked to the row's end.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from reader.pattern.tree import Act, Deed, Node, Place, Repeat, Where, Work
from reader.terms.stitches import Craft

ENDS = frozenset(["end", "ending", "end with", "ending with", "finish", "finish with", "finishing"])
PLAIN = ("k", "p")


def ends_plain(nodes: Sequence[Node]) -> list[Node]:
    """The row with its last stitch worked to the end where the words only say how it ends; a list
    that is repeated may end so with one stitch.
    """
    made = list(nodes)
    if len(made) < 3 or any(isinstance(one, Repeat) for one in made):
        return made
    told, last = made[-2], made[-1]
    says = isinstance(told, Act) and told.deed is Deed.NOTE and told.words.lower() in ENDS
    if not says or not isinstance(last, Work) or last.stitch.craft is not Craft.KNITTING:
        return made
    bare = last.number is None and last.place.where is Where.PLAIN and last.stitch.name in PLAIN
    return [*made[:-1], replace(last, place=Place(Where.REST, last.span))] if bare else made
