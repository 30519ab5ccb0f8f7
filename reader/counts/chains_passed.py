"""How many chains stand before the first stitch of a foundation row, and what is known of turning
chains so high.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from reader.pattern.tree import Group, Node, Repeat, Skip, Where, Work


def chains_passed(work: Work | None, body: Sequence[Node]) -> int:
    """The chains; 0 where nothing tells. work: the row's first stitch."""
    first = next((one for one in body if isinstance(one, Skip | Work | Repeat | Group)), None)
    if isinstance(first, Skip):
        return chains_in(first)
    return max(0, work.place.nth - 1) if work is not None else 0


def chains_in(passed: Skip) -> int:
    """How many chains are passed over: "skip 3 ch", "starting in 4th ch"."""
    place = passed.place
    return place.nth if place.where is Where.CHAIN and place.nth else place.number.values[0]


def told_by_height(
    work: Work | None, body: Sequence[Node], held: Mapping[int, bool]
) -> bool | None:
    """Whether turning chains so high count, None where nothing is known, or before a low stitch.
    held: what is known, by height.
    """
    if work is None or work.stitch.height < 2:
        return None
    return held.get(chains_passed(work, body))
