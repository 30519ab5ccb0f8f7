"""Lists told a little more than once before they go on: "2 in the next, one in the next, two in the
next, all round" -> what is worked in one pass; and lists inside others, "* 2 dc in next st, repeat
from *, ...", that come once more.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from reader.pattern.tree import ONE, Act, Group, Node, Num, Repeat, Until, Where, Work
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


def is_bare(node: Repeat) -> bool:
    """Whether the words say no more than where to go back to."""
    return node.words.lower().rstrip(" ,;.").endswith("*")


def once_inside(body: Sequence[Node]) -> tuple[Node, ...]:
    """What a repeat goes over, with the repeats inside it that are told bare, "* ch 5, sc in next
    loop, repeat from *, ch 5, skip 2 ...", as worked once more.
    """
    if sum(isinstance(one, Work | Group | Repeat) for one in body) < 2:
        return tuple(body)
    return tuple(
        replace(one, until=Until.TIMES, number=Num((2,)))
        if isinstance(one, Repeat) and one.until is Until.OPEN and is_bare(one) and not one.ending
        else one
        for one in body
    )
