"""A net whose stitches are low by their name, "5 ch, dc over dc, * 2 ch, miss 2, dc over dc": books
of the 1850s call tall stitches so, and the chain that begins each row is a stitch and a space.
"""

from __future__ import annotations

from collections.abc import Sequence

from reader.pattern.tree import Chain, Node, Repeat, Skip, Work

STITCH = 3
"""Chains that stand for a stitch."""


def square(body: Sequence[Node]) -> int:
    """The chains of the net's open squares, 0 where the row tells of none that pass over as many
    stitches as they have chains.
    """
    for one in body:
        if isinstance(one, Repeat) and (inner := square(one.body)):
            return inner
    for chain, skip, work in zip(body, body[1:], body[2:], strict=False):
        if isinstance(chain, Chain) and isinstance(skip, Skip) and isinstance(work, Work):
            chains = chain.number.values[0]
            if chains > 1 and skip.place.number.values[0] == chains:
                return chains
    return 0


def begins_a_square(body: Sequence[Node], height: int) -> bool:
    """Whether a chain of so many is the first stitch and the first space of such a row."""
    chains = square(body)
    return chains > 0 and height == chains + STITCH


def foundation_square(body: Sequence[Node], nth: int) -> bool:
    """The same of the chains before the nth from the hook, with those below the space."""
    chains = square(body)
    return chains > 0 and nth - 1 in (2 * chains + STITCH, 2 * chains + STITCH - 1)
