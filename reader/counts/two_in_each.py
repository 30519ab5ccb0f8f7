""" "2 sdc in next 2 sts" in a row that tells plain stitches as "1 sdc in each of next 13 sts" and
increases as "2 sdc in each of next 2 sts": an increase too, its "each of" left out.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from reader.pattern.tree import Node, Repeat, Where, Work
from reader.terms.stitches import Craft


def two_in_each(nodes: Sequence[Node]) -> Sequence[Node]:
    """The row with such stitches two in each; as it is where it doesn't tell both of them so."""
    bare = [one for one in _works(nodes) if _is_bare(one)]
    if not bare:
        return nodes
    told = {(one.stitch.name, _number(one) > 1) for one in _works(nodes) if _of_each(one)}
    names = {one.stitch.name for one in bare}
    names = {name for name in names if {(name, False), (name, True)} <= told}
    return [_each(one, names) for one in nodes] if names else nodes


def _works(nodes: Sequence[Node]) -> Iterator[Work]:
    for one in nodes:
        if isinstance(one, Repeat):
            yield from _works((*one.body, *one.ending))
        elif isinstance(one, Work) and one.stitch.craft is Craft.CROCHET:
            yield one


def _number(one: Work) -> int:
    return one.number.values[0] if one.number is not None else 1


def _is_bare(one: Work) -> bool:
    """Whether as many stitches as places are told, and not of each."""
    place = one.place
    several = place.where is Where.NEXT and not place.each and place.number == one.number
    return several and _number(one) == 2 and one.stitch.takes == one.stitch.makes == 1


def _of_each(one: Work) -> bool:
    place = one.place
    return place.where is Where.NEXT and place.each and place.number.values[0] > 1


def _each(node: Node, names: set[str]) -> Node:
    if isinstance(node, Repeat):
        body = tuple(_each(one, names) for one in node.body)
        return replace(node, body=body, ending=tuple(_each(one, names) for one in node.ending))
    if isinstance(node, Work) and _is_bare(node) and node.stitch.name in names:
        return replace(node, place=replace(node.place, each=True))
    return node
