"""A first row that does not say in which chain it begins, "* 2 tr in next ch, ch 1, miss 1; repeat"
over 60 chains: counted over the whole chain where its repeat comes out even there.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from reader.counts.ends import ends_of, first_work
from reader.counts.fabric import Below, foundation
from reader.pattern.tree import Node, Repeat, Skip, Until, Where, Work

LEAST = 4
"""Chains: fewer tell nothing of how often a list is meant."""


def over_whole_chain(nodes: Sequence[Node], below: Below, is_round: bool) -> Below | None:
    """The foundation as a row whose every chain is worked into or missed; None where the row does
    not go on in passes of several chains, or says itself in which chain it begins. A round can only
    be of a chain that was joined, though no word says so.
    """
    ends = ends_of(nodes)
    chains = sum(run.n for run in below.runs)
    if not below.chained or ends.foundation is not None or chains < LEAST:
        return None
    first = first_work(ends.body)
    if is_round and first is not None and first.place.where in (Where.EACH, Where.NEXT):
        return foundation(chains, True)
    again = [one for one in ends.body if isinstance(one, Repeat) and one.until is Until.OPEN]
    if len(again) != 1 or not _passes_several(again[0]):
        return None
    return replace(foundation(chains, True), flat=True)


def _passes_several(again: Repeat) -> bool:
    """Whether one pass of a repeat takes more than one chain, so that it comes out even by design
    and not of itself.
    """
    works = [one for one in again.body if isinstance(one, Work | Skip)]
    return len(works) > 1 and any(isinstance(one, Skip) for one in works)
