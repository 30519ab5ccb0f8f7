"""Stitches told by what they stand on, alone in their row: "double in double", "a treble in treble
around", "2 trebles between groups" -> one, or so many, in each.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from reader.pattern.tree import ONE, Act, Chain, Deed, Node, Where, Work
from reader.terms.stitches import Kind

IN_ITS_KIND = re.compile(
    r"^in(?:to)? (?!the\b|a\b|an\b|next|same|last|first|1st|\d)[a-z][a-z -]{1,20}?"
    r"(?: (?:all )?(?:around|round|across))?$",
    re.IGNORECASE,
)
NO_KIND = ("st", "sp", "ch", "tch", "ring", "corner", "center", "loop", "picot", "shell", "group")


def one_in_each(nodes: Sequence[Node]) -> list[Node]:
    """The row with such a stitch in each of those below; where others stand beside it, up to the
    turn of the work, it is one in the next.
    """
    out: list[Node] = []
    stretch: list[Node] = []
    for one in nodes:
        stretch.append(one)
        if isinstance(one, Act) and one.deed is Deed.TURN:
            out += _of_stretch(stretch, out)
            stretch = []
    return out + _of_stretch(stretch, out)


def _of_stretch(nodes: Sequence[Node], before: Sequence[Node]) -> list[Node]:
    works = [one for one in nodes if not isinstance(one, Act | Chain)]
    alone = works[0] if len(works) == 1 else None
    if not isinstance(alone, Work) or not (_in_its_kind(alone) or _between_all(alone)):
        return list(nodes)
    each: Node = replace(alone, place=replace(alone.place, where=Where.EACH, each=True))
    if any(not isinstance(one, Act | Chain) for one in before):
        # Back over what was just made, which leaves as many.
        each = Act(alone.span, alone.words, Deed.NOTE)
    return [each if one is alone else one for one in nodes]


BETWEEN_THEM = re.compile(
    r"^(?:in (?:the )?spaces )?between (?:the )?(?:groups|shells|fans|clusters|scallops|pairs)\b",
    re.IGNORECASE,
)


def _between_all(one: Work) -> bool:
    """Whether stitches go "between groups", whichever those are."""
    return one.place.where is Where.NEXT and BETWEEN_THEM.match(one.place.text) is not None


def _in_its_kind(one: Work) -> bool:
    """Whether one plain stitch is worked "in double", no next or same beside it."""
    place, single = one.place, one.number is None or one.number == ONE
    plain = one.stitch.kind is Kind.STITCH and one.stitch.takes == one.stitch.makes == 1
    named = place.where is Where.NEXT and place.number == ONE and not place.each and not place.nth
    into = place.noun not in NO_KIND and IN_ITS_KIND.match(place.text) is not None
    return single and plain and named and into
