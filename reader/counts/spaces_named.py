"""Spaces that a row names by their chains and that the row below has not: "in each ch-3 sp" over
spaces of two chains -> a question.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from reader.counts.counted import Problem, Verdict
from reader.counts.fabric import SPACE, Below
from reader.counts.faults import Where, quoted
from reader.pattern.tree import Group, Node, Repeat, Skip, Work
from reader.pattern.tree import Where as Spot

OWN = (Spot.SAME, Spot.RING, Spot.CHAIN, Spot.ELSEWHERE)
"""Places that may lie in the row itself, or elsewhere."""


def not_there(nodes: Sequence[Node], below: Below, where: Where) -> Problem | None:
    """The question, None where every space that is named is there or nothing is known of them."""
    if below.stitches is None or below.chained or below.in_loop:
        return None
    spaces = list(_named(nodes))
    if not spaces or not below.runs or any(run.name in ("st", "ch") for run in below.runs):
        # Of a ring, "24 sc on the 12 chain" are all its chains.
        return None
    made = {run.chains for run in below.runs if run.name == SPACE}
    named = next((chains for chains in spaces if chains not in made), 0)
    if not named:
        return None
    has = " and ".join(f"ch-{one}" for one in sorted(made))
    said = (
        f"{where.label}: its words speak of ch-{named} spaces, but the row below has "
        f"{f'{has} spaces' if has else 'no spaces'}: {quoted(where.words)}. Please check them."
    )
    return Problem(Verdict.UNCLEAR, said, where.span, where.part, where.label)


def _named(nodes: Sequence[Node]) -> Iterator[int]:
    """The chains of the spaces that instructions go into."""
    for one in nodes:
        if isinstance(one, Repeat):
            yield from _named((*one.body, *one.ending))
        elif isinstance(one, Work | Group | Skip):
            place = one.place
            if place.noun == "sp" and place.chain and place.where not in OWN:
                yield place.chain
