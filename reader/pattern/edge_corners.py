"""Corners of an edge all around a piece, "3 sc in each corner, 40 sc along each long side and 28 sc
along each short side": as many corners as sides are told.
"""

from __future__ import annotations

from dataclasses import replace

from reader.pattern.tree import Node, Num, Place, Where, Work


def as_many_as_sides(nodes: tuple[Node, ...]) -> tuple[Node, ...]:
    """The row with its corners counted, where it works nothing but corners and edges."""
    places = [one.place for one in nodes if isinstance(one, Work)]
    sides = sum(place.number.values[0] for place in places if _is_edge(place))
    if sides < LEAST or not all(_is_edge(one) or _each_corner(one) for one in places):
        return nodes
    return tuple(
        replace(one, place=replace(one.place, where=Where.ELSEWHERE, number=Num((sides,)),
                                   noun="edge", each=False))
        if isinstance(one, Work) and _each_corner(one.place) else one
        for one in nodes
    )  # fmt: skip


LEAST = 3
"""Sides of a piece that has corners all around."""


def _is_edge(place: Place) -> bool:
    return place.where is Where.ELSEWHERE and place.noun == "edge"


def _each_corner(place: Place) -> bool:
    return place.where is Where.EACH and "corner" in place.text.lower()
