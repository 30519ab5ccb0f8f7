"""Groups into groups, "* in next sp make dc, ch 1 and dc; rep from * across": where every group
below holds a space of its own, that is meant, and not what lies between two groups.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from reader.counts.fabric import GAP, SPACE, Below, Run
from reader.pattern.tree import Chain, Group, Node, Repeat, Work


def without_gaps(below: Below, body: Sequence[Node]) -> Below:
    """The row below without what lies between its groups, where the row goes only into them."""
    if not any(_is_gap(run) for run in below.runs) or not _one_space_each(below.runs):
        return below
    into = [one for one in _flat(body) if one.place.noun == "sp"]
    holding = [isinstance(one, Group) and _holds_chain(one) for one in into]
    if not into or not all(holding) or any("bet" in one.place.text.lower() for one in into):
        return below
    return replace(below, runs=tuple(run for run in below.runs if not _is_gap(run)))


def _is_gap(run: Run) -> bool:
    return run.name == GAP and not run.unit


def _holds_chain(group: Group) -> bool:
    return any(isinstance(one, Chain) for one in group.body)


def _one_space_each(runs: Sequence[Run]) -> bool:
    """Whether one space lies between every two gaps."""
    spaces = [0]
    for run in runs:
        if _is_gap(run):
            spaces.append(0)
        spaces[-1] += run.n * (run.name == SPACE)
    inner = spaces[1:-1]
    return bool(inner) and all(number == 1 for number in inner)


def _flat(nodes: Sequence[Node]) -> Iterator[Work | Group]:
    for one in nodes:
        if isinstance(one, Repeat):
            yield from _flat(one.body)
        elif isinstance(one, Work | Group):
            yield one
