"""A row of stitches only, whose groups the next row tells by their size: "3 dc in each sp between
2-dc groups" -> the row below with those groups in it.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import replace

from reader.counts.fabric import Below, Run
from reader.counts.openings import UNITS
from reader.pattern.tree import Group, Node, Place, Repeat, Skip, Work

SIZE = re.compile(
    r"\bbetween\b.*?(?:\b(\d) ?- ?[a-z]+ (?:groups?|grps?|shells?|clusters?)"
    r"|(?:groups?|grps?) of (\d)\b)"
)


def groups_parted(nodes: Sequence[Node], below: Below) -> Below:
    """The row below as groups of the size that is told; as it is where none is, where the row tells
    of groups or loops itself, or does not come out in such groups.
    """
    if not below.stitches or any(run.unit or not run.is_stitch for run in below.runs):
        return below
    told = [SIZE.search(one.text.lower()) for one in places_in(nodes) if one.noun in UNITS]
    sizes = {int(one[1] or one[2]) for one in told if one}
    size = sizes.pop() if len(sizes) == 1 else 0
    kinds = {run.name for run in below.runs}
    if size < 2 or below.stitches % size or len(kinds) != 1:
        return below
    group = Run(kinds.pop(), size, unit="group")
    return replace(below, runs=(group,) * (below.stitches // size))


def places_in(nodes: Sequence[Node]) -> Iterator[Place]:
    """The places that a row's instructions name, in order."""
    for one in nodes:
        if isinstance(one, Repeat):
            yield from places_in([*one.body, *one.ending])
        elif isinstance(one, Work | Group | Skip):
            yield one.place
