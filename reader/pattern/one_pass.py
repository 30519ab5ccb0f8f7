"""Lists told a little more than once before they go on: "2 in the next, one in the next, two in the
next, all round" -> what is worked in one pass.
"""

from __future__ import annotations

from collections.abc import Sequence

from reader.pattern.tree import ONE, Act, Node, Where, Work
from reader.terms.stitches import Craft


def one_pass(body: Sequence[Node]) -> tuple[Node, ...]:
    """The list up to where it begins to come again; all of it where it does not."""
    works = [one for one in body if not isinstance(one, Act)]
    if len(works) < LEAST or not all(_in_order(one) for one in works):
        return tuple(body)
    for length in range(2, len(works)):
        if all(_alike(one, works[at]) for at, one in enumerate(works[length:])):
            return tuple(works[:length])
    return tuple(body)


LEAST = 3
"""Stitches of a list that comes again."""


def _in_order(one: Node) -> bool:
    """Whether crochet that goes into one place after the other."""
    return isinstance(one, Work) and one.stitch.craft is Craft.CROCHET and (
        one.place.where in (Where.NEXT, Where.PLAIN, Where.FIRST)
    )


def _alike(one: Node, other: Node) -> bool:
    if not isinstance(one, Work) or not isinstance(other, Work):
        return False
    return (one.stitch, one.number or ONE, one.place.number, one.place.noun) == (
        other.stitch, other.number or ONE, other.place.number, other.place.noun
    )  # fmt: skip
