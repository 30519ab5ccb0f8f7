"""Stitches with chains between them, worked into between two of them: over "10 tr with ch 1 between
each", "sc between 1st 2 tr, * ch 3, sc between next 2 tr" goes into those chain spaces.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from reader.counts.fabric import SPACE, Below
from reader.counts.openings import BETWEEN
from reader.pattern.tree import ONE, Node, Place, Repeat, Where, Work

TWO_OF = re.compile(
    r"\b(?:between|bet)\s+(?:the\s+|each\s+)?(?P<which>next|1st|first|following|foll)\s+(?:2|two)\s+"
    r"(?P<of>d ?tr|tr|h ?d ?c|d ?c|s ?c)(?: ?c)?s?\b(?!\s*[- ]?(?:groups?|grps?)\b)",
    re.IGNORECASE,
)
LEAST = 3
"""Stitches of a kind with one chain space between every two, that are gone into so."""


def chained_gaps(nodes: Sequence[Node], below: Below) -> Sequence[Node]:
    """The row with the spaces between such stitches as its places; as it is where it names none, or
    where the stitches below do not stand so.
    """
    gaps = {one: _chains_apart(one, below) for one in _named(nodes)}
    gaps = {one: chains for one, chains in gaps.items() if chains}
    return [_into_space(one, gaps) for one in nodes] if gaps else nodes


def _named(nodes: Sequence[Node]) -> set[str]:
    """Of which stitches the row goes between two."""
    out: set[str] = set()
    for one in nodes:
        if isinstance(one, Repeat):
            out |= _named(one.body) | _named(one.ending)
        elif isinstance(one, Work) and (name := _between(one.place)):
            out.add(name)
    return out


def _between(place: Place) -> str:
    """The stitch of which the place lies between two, "" for another place."""
    found = TWO_OF.search(place.text) if BETWEEN.search(place.text) else None
    name = found["of"].lower().replace(" ", "") if found else ""
    return name if place.noun in ("st", "sp", name) else ""


def _chains_apart(name: str, below: Below) -> int:
    """The chains between every two stitches of that kind that lie below one by one; 0 where they do
    not lie so.
    """
    runs, most, here, chains = below.runs, 0, 0, 0
    for at, run in enumerate(runs):
        if run.name == name and run.n == 1:
            chained = at > 1 and runs[at - 1].name == SPACE and runs[at - 2].name == name
            here = here + 1 if chained and here else 1
            chains = runs[at - 1].chains if here > most > 0 else chains
            most = max(most, here)
        elif run.name != SPACE:
            here = 0
    return chains if most >= LEAST else 0


def _into_space(node: Node, gaps: dict[str, int]) -> Node:
    if isinstance(node, Repeat):
        body = tuple(_into_space(one, gaps) for one in node.body)
        ending = tuple(_into_space(one, gaps) for one in node.ending)
        return replace(node, body=body, ending=ending)
    if not isinstance(node, Work) or _between(node.place) not in gaps:
        return node
    found = TWO_OF.search(node.place.text)
    first = found is not None and found["which"].lower() in ("1st", "first")
    which = Where.FIRST if first and "pineapple" in node.place.text else Where.NEXT
    chains = gaps[_between(node.place)]
    place = replace(node.place, where=which, noun="sp", number=ONE, each=False, chain=chains)
    return replace(node, place=place)
