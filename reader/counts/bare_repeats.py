"""Repeats of which neither the words nor the row below tell how often: "* ch 6, repeat from *"."""

from __future__ import annotations

import re
from dataclasses import replace

from reader.counts.tally import Tally
from reader.pattern.one_pass import is_bare
from reader.pattern.tree import Num, Repeat, Until


def as_often(node: Repeat, one: Tally, tally: Tally) -> Repeat:
    """The repeat with how often it is worked, where the row below does not tell it. one: what a
    pass does.
    """
    if node.until is not Until.OPEN or node.ending:
        return node
    if is_bare(node) and takes_nothing(one):
        # "* ch 6, picot, repeat from *, ch 1": the row below does not tell how often; once more.
        return replace(node, until=Until.TIMES, number=Num((2,)))
    named = named_in(node, tally) if takes_nothing(one) else 0
    return replace(node, until=Until.TIMES, number=Num((named,))) if named else node


def named_in(node: Repeat, tally: Tally) -> int:
    """How many stitches below there are of the one kind that a body's words name, 0 where they name
    none: "sl st in ch below cluster st, ch 5" is worked at each cluster.
    """
    said = " ".join(one.words for one in node.body).lower()
    named = [n for name, n in tally.below.kinds.items() if name in said and len(name) > 3]
    return named[0] if len(named) == 1 and named[0] > 1 else 0


def takes_nothing(one: Tally) -> bool:
    """Whether a body is only chains and what is worked into them."""
    walk = one.walk
    return not (walk.takes or walk.space_takes or one.unsure or one.unread or one.elastic)


IN_EACH_GROUP = re.compile(
    r"\b(?:in|on|over|at|across|for) (?:each|every) (?:of the )?(?:scallop|petal|point|division"
    r"|section|lea[fv]|group|wheel|oval)",
    re.IGNORECASE,
)
"""How often a repeat is worked, where the row below was worked in so many sections."""


def groups_below(node: Repeat, tally: Tally) -> int:
    """In how many scallops (petals, points) of the row below a repeat is worked, where its words
    say so; 0 where they don't, or it is not known.
    """
    told = node.until is Until.OPEN and not node.ending and IN_EACH_GROUP.search(node.words)
    return tally.below.sections if told and tally.below.sections > 1 else 0
