"""A flat row of groups without chains between them, worked into between them: "3 dc between next 2
groups", "between first 2 dc and next group" -> the row below with the gaps that are meant, and the
row with those gaps as its places.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from reader.counts.fabric import APART, GAP, Below, Run
from reader.counts.groups_parted import groups_parted, places_in
from reader.counts.openings import BETWEEN, UNITS
from reader.pattern.tree import ONE, Act, Deed, Group, Node, Place, Repeat, Skip, Work

AND_OTHER = re.compile(r"\b(?:between|bet)\b.*(?:\band\b|&)", re.IGNORECASE | re.DOTALL)


def gaps_between(nodes: Sequence[Node], below: Below) -> tuple[Sequence[Node], Below]:
    """The row and the row below with a gap between every two groups, and beside the stitches at its
    edges where the row names those; groups may be told by their size. Both as they are where it is
    a round, has openings, no such place is named, or no other: of a row that tells nothing of its
    edges there are as many groups as below.
    """
    below = groups_parted(nodes, below)
    if _goes_round(nodes) or below.is_round or not any(_told(run) for run in below.runs):
        return nodes, below
    lie = _without_gaps(below.runs)
    places = list(places_in(nodes))
    apart = [one for one in places if _lies_apart(one)]
    if len(apart) in (0, len(places)) or any(not run.is_stitch for run in lie):
        return nodes, below
    edged = any(AND_OTHER.search(one.text) for one in apart)
    runs: list[Run] = []
    for one in lie:
        before = runs[-1] if runs else None
        groups = before is not None and _told(before) and _told(one)
        if groups or (before is not None and edged and (_told(before) or _told(one))):
            runs.append(Run(GAP, unit=APART))
        runs.append(one)
    return [_into_gap(one) for one in nodes], replace(below, runs=tuple(runs))


def _goes_round(nodes: Sequence[Node]) -> bool:
    """Whether a row closes to a round."""
    return any(
        (isinstance(one, Act) and one.deed is Deed.JOIN)
        or (isinstance(one, Repeat | Work) and AROUND.search(one.words) is not None)
        for one in nodes
    )


AROUND = re.compile(r"\baround\b", re.IGNORECASE)


def _without_gaps(runs: Sequence[Run]) -> Sequence[Run]:
    """The runs without the gaps that a row keeps where it was not sure of its groups, where all of
    it but its edges is groups.
    """
    kept = [run for run in runs if run.name != GAP]
    return kept if all(_told(run) for run in kept[1:-1]) else runs


def _told(run: Run) -> bool:
    return run.is_stitch and bool(run.unit) and run.n > 1


def _lies_apart(place: Place) -> bool:
    return place.noun in UNITS and BETWEEN.search(place.text) is not None


def _into_gap(node: Node) -> Node:
    """A node with the gap between two groups as its place."""
    if isinstance(node, Repeat):
        body = tuple(_into_gap(one) for one in node.body)
        return replace(node, body=body, ending=tuple(_into_gap(one) for one in node.ending))
    if isinstance(node, Work | Group | Skip) and _lies_apart(node.place):
        return replace(node, place=replace(node.place, noun="sp", number=ONE))
    return node
