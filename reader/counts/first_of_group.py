"""Repeats into the first stitch of a kind, "1 dc into the 1st dc in last round, 7 chain, repeat":
one in each group of the row below, whose stitches of that kind may lie side by side.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from reader.counts.anchored import over_group
from reader.counts.fabric import GAP, Below
from reader.pattern.tree import ONE, Act, Chain, Node, Num, Repeat, Skip, Until, Where, Work

FIRST = re.compile(r"\b(?:1st|first)\b", re.IGNORECASE)


def in_first_of_groups(nodes: Sequence[Node], below: Below) -> Sequence[Node]:
    """The row with what such a pass leaves of its group as passed over, where the groups of the
    row below are alike.
    """
    if not below.stitches or below.spaces or not any(isinstance(one, Repeat) for one in nodes):
        return nodes
    return [
        _over_group(over_group(one), below) if isinstance(one, Repeat) else one for one in nodes
    ]


def _over_group(again: Repeat, below: Below) -> Repeat:
    works = [one for one in again.body if not isinstance(one, Chain | Act)]
    only = works[0] if len(works) == 1 else None
    if again.until is not Until.OPEN or again.ending or not isinstance(only, Work):
        return again
    place, single = only.place, only.number in (None, ONE)
    if place.where is not Where.FIRST or not single or FIRST.search(place.text) is None:
        return again
    size = _group_of(below, place.noun)
    if size < 2:
        return again
    at = replace(place, where=Where.NEXT, noun="st", nth=0)
    left = replace(at, number=Num((size - 1,)), each=size > 2)
    body = [replace(only, place=at) if one is only else one for one in again.body]
    return replace(again, body=(*body, Skip(only.span, only.words, left)))


def _group_of(below: Below, name: str) -> int:
    """How many stitches a group has, 0 where stitches of that name stand in no groups alike."""
    parted = [run for run in below.runs if run.name == GAP and not run.unit]
    many = len(parted)
    if many > 1 and (below.stitches or 0) % many == 0:
        # Groups that were worked into one loop each.
        return (below.stitches or 0) // many
    runs = [run for run in below.runs if run.is_stitch]
    named = [run.n for run in runs if run.name == name]
    if not runs or len(named) == len(runs):
        return 0
    if len(named) > 1 and runs[0].name == runs[-1].name == name:
        # The round's end and its beginning lie side by side.
        named = [named[0] + named[-1], *named[1:-1]]
    many = len(named)
    alike = many > 1 and len(set(named)) == 1 and (below.stitches or 0) % many == 0
    return (below.stitches or 0) // many if alike else 0
