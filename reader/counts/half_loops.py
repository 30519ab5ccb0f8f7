"""Half loops at the edges of a net, which a row that begins in the edge stitch passes by: over
"ch 5, turn, sc in loop, ..., ch 2, dc in last sc" it goes "sc in dc, * ch 5, sc in next loop".
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from reader.counts.ends import first_work
from reader.counts.fabric import SPACE, Below, Run
from reader.pattern.tree import Act, Chain, Node, Repeat, Where, Work

SHORTEST = 3
"""Chains of a whole loop at least."""


def past_half_loops(below: Below, body: Sequence[Node]) -> Below:
    """The row below without the half loops that the row passes by."""
    runs = below.runs
    if len(runs) < 4 or not _begins_at_edge(body):
        return below
    longest = max(run.chains for run in runs if run.name == SPACE) if below.spaces else 0
    if longest < SHORTEST:
        return below
    if _is_half(runs[0], runs[1], longest):
        runs = (runs[0], *runs[2:])
    if _is_half(runs[-1], runs[-2], longest) and _ends_at_edge(body):
        runs = (*runs[:-2], runs[-1])
    return below if runs is below.runs else replace(below, runs=runs)


def _is_half(edge: Run, loop: Run, longest: int) -> bool:
    """Whether one stitch and a loop of half the length lie at an edge."""
    return edge.is_stitch and edge.n == 1 and loop.name == SPACE and 2 * loop.chains <= longest


def _begins_at_edge(body: Sequence[Node]) -> bool:
    """Whether a low stitch in the edge stitch comes first, then a chain to the next loop."""
    works = [one for one in body if not isinstance(one, Act)][:2]
    if len(works) < 2 or not isinstance(works[0], Work) or works[0].stitch.height > 1:
        return False
    place, behind = works[0].place, works[1]
    inner = behind.body if isinstance(behind, Repeat) else body[body.index(behind) :]
    chain, loop = inner[0], first_work(inner)
    to_loop = isinstance(chain, Chain) and chain.number.values[0] >= SHORTEST
    at_edge = place.where in (Where.FIRST, Where.NEXT) and place.noun not in ("sp", "ch")
    return to_loop and at_edge and loop is not None and loop.place.noun == "sp"


def _ends_at_edge(body: Sequence[Node]) -> bool:
    """Whether a stitch of its own goes into the turning chain, behind the last loop."""
    works = [one for one in body if not isinstance(one, Act)]
    last = works[-1].ending[-1:] if isinstance(works[-1], Repeat) else works[-1:]
    return any(isinstance(one, Work) and one.place.noun == "tch" for one in last)
