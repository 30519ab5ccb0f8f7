"""Rounds of plain stitches over long loops, or over the chains of a ring: every chain is a place,
as in "Dc. all round" of old books.
"""

from __future__ import annotations

from collections.abc import Sequence

from reader.counts.ends import Ends
from reader.counts.fabric import SPACE, Below, chains_as_stitches, foundation, nameless
from reader.counts.half_loops import past_half_loops
from reader.counts.posts import posts_as_plain
from reader.counts.tally import Choice
from reader.counts.turning import with_turning_space
from reader.counts.within_groups import without_gaps
from reader.pattern.tree import Act, Chain, Node, Repeat, Shape, Skip, Where, Work


def lies_below(ends: Ends, below: Below, choice: Choice, size: int) -> Below:
    """What a row is worked into, under one reading."""
    if ends.foundation is not None:
        return foundation(ends.foundation.number.at(size))
    below = posts_as_plain(below, ends.body)
    below = nameless(below) if choice.any_name else with_turning_space(below, ends.body)
    if choice.chains_below:
        return chains_as_stitches(below)
    return along_chains(without_gaps(past_half_loops(below, ends.body), ends.body), ends.body)


PLAIN = (Where.PLAIN, Where.REST, Where.EACH)
SHORTEST = 3
"""Chains: the stitches over shorter ones may be told without them."""


def along_chains(below: Below, nodes: Sequence[Node]) -> Below:
    """The row below with its chains as stitches, where plain stitches go over long loops, or over
    the chains of a ring whose number is gained upon; as it is for other rows.
    """
    works = [one for one in _flat(nodes) if not isinstance(one, Act | Chain)]
    if not works or not all(_is_plain(one) for one in works):
        return below
    if below.ring and below.stitches is None:
        whole = any(
            isinstance(one, Shape) or (isinstance(one, Work) and one.place.where is Where.EACH)
            for one in works
        )
        return foundation(below.ring, True) if whole else below
    loops = [run for run in below.runs if run.name == SPACE]
    chains = sum(run.n * run.chains for run in loops)
    long = bool(loops) and min(run.chains for run in loops) >= SHORTEST
    each = below.hooked and all(isinstance(x, Work) and x.place.where is Where.EACH for x in works)
    most = each or chains >= (below.stitches or 0)
    return chains_as_stitches(below) if long and most else below


def _flat(nodes: Sequence[Node]) -> list[Node]:
    """A list with the bodies of its repeats in their place."""
    out: list[Node] = []
    for one in nodes:
        out += _flat(one.body) if isinstance(one, Repeat) else [one]
    return out


def _is_plain(one: Node) -> bool:
    """Whether an instruction goes into whatever stitch comes next."""
    if isinstance(one, Shape):
        return True
    if isinstance(one, Work):
        every = one.place.where is Where.EACH and one.place.noun == "ch"
        plain = one.place.where in PLAIN and one.place.noun == "st"
        return (plain or every) and not one.place.among
    return isinstance(one, Skip) and one.place.noun == "st"
