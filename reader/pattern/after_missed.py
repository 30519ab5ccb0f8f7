"""Stitches counted with those that are missed before them: "miss 2, 1 dc on the 3rd" is the next
stitch behind the two; "26 ch, miss 7, 1 dc on 8th" is the 8th chain from the hook.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from reader.pattern.tree import ONE, Chain, Node, Repeat, Skip, Where, Work

LONG = 10
"""Chains at least of a foundation."""


def counted_with_missed(nodes: Sequence[Node]) -> list[Node]:
    """The row with such places as most tell them."""
    out: list[Node] = []
    for at, one in enumerate(nodes):
        before = out[-1] if out else None
        if isinstance(one, Repeat):
            body, ending = counted_with_missed(one.body), counted_with_missed(one.ending)
            one = replace(one, body=tuple(body), ending=tuple(ending))
        elif isinstance(one, Work) and isinstance(before, Skip) and _reached(one, before):
            if _from_hook(nodes[: at - 1]):
                out.pop()
                place = replace(one.place, where=Where.CHAIN, noun="ch")
            else:
                place = replace(one.place, nth=0)
            one = replace(one, place=place)
        out.append(one)
    return out


def _reached(work: Work, skip: Skip) -> bool:
    """Whether the stitch is the one behind those missed, by its number."""
    place, missed = work.place, skip.place
    plain = missed.where is Where.NEXT and missed.noun in ("st", "ch") and not missed.nth
    one = place.where is Where.NEXT and place.number == ONE and not place.each
    return plain and one and len(missed.number.values) == 1 and (
        place.nth == missed.number.values[0] + 1
    )


def _from_hook(before: Sequence[Node]) -> bool:
    """Whether nothing but a foundation stands before."""
    only = before[0] if len(before) == 1 else None
    return isinstance(only, Chain) and only.number.values[0] >= LONG
