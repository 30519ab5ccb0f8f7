"""A chain that is joined and then worked along in the same row, "ch 60, join, 1 sc in each ch": a
round lies below, of as many stitches as it has chains.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from reader.counts.ends import Ends, first_work
from reader.counts.fabric import Below, foundation
from reader.counts.walk import Walk
from reader.pattern.tree import Act, Chain, Node, Place, Repeat, Skip, Where, Work
from reader.terms.stitches import Kind

ALONG = (Where.NEXT, Where.FIRST, Where.EACH, Where.REST)
JOINED = re.compile(r"(?:and |then )?join", re.IGNORECASE)
LEAST = 10
"""Chains, at least, of which "each st" may be said without naming the chain; fewer are a ring."""


def along_joined(ends: Ends, rest: Sequence[Node], below: Below, walk: Walk, size: int) -> bool:
    """Lets the walk go along such a chain; False where there is none, or it holds a ring."""
    chain = next((one for one in ends.lead if isinstance(one, Chain)), None)
    joined = any(isinstance(one, Act) and JOINED.match(one.words) for one in ends.lead)
    if chain is None or not joined or below.stitches is not None or below.runs:
        return False
    first = first_work(rest)
    if first is None or first.stitch.kind is Kind.SLIP:
        # Loops held by slip stitches: how many the next round has is not told by this one.
        return False
    place = _first_place(rest)
    number = chain.number.at(size)
    begun = place is not None and place.where is Where.SAME and number >= LEAST
    if place is None or not (begun or place.where in ALONG) or place.nth > 1:
        return False
    named = place.noun in ("ch", "tch")
    if not named and (place.noun != "st" or place.where is Where.REST or number < LEAST):
        return False
    walk.over(foundation(number, True))
    return True


def _first_place(rest: Sequence[Node]) -> Place | None:
    """The first place that the row goes into or skips."""
    for one in rest:
        if isinstance(one, Skip):
            return one.place
        if isinstance(one, Repeat):
            return _first_place(one.body)
        if isinstance(one, Work) and (work := first_work([one])) is not None:
            return work.place
    return None
