"""Rows told for one pattern only: "15 stitches to a pattern", so that a row of 15 stitches is
worked again and again, and what is over is the edge.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from functools import lru_cache

from reader.pattern.tree import Act, Node, Where, Work
from reader.terms.numbers import SPELLED, word_number
from reader.terms.stitches import Craft

UNIT = re.compile(
    rf"\b(?P<n>\d+|{SPELLED})\s+(?:stitches|sts|loops)\s+"
    r"(?:(?:are\s+)?(?:required\s+|needed\s+|used\s+)?(?:to|for|in)\s+)(?:a|each|every|one)\s+"
    r"(?:pattern|repeat|scallop|leaf|stripe|flower|shell)\b",
    re.IGNORECASE,
)


@lru_cache(maxsize=4)
def _units(text: str) -> tuple[tuple[int, int], ...]:
    """Each place of a text that tells of a pattern's stitches, and how many they are."""
    told: list[tuple[int, int]] = []
    for found in UNIT.finditer(text):
        said = found.group("n")
        told.append((found.end(), int(said[:4]) if said.isdigit() else word_number(said) or 0))
    return tuple(told)


def unit_before(text: str, at: int) -> int:
    """The stitches of one pattern that were told of last before a place; 0 where none were."""
    return next((number for place, number in reversed(_units(text)) if place <= at), 0)


def takes_of(nodes: Sequence[Node]) -> int:
    """The stitches that a knitted list of plain numbers takes; 0 for anything else."""
    takes = 0
    for one in nodes:
        if isinstance(one, Act):
            continue
        if not isinstance(one, Work) or one.stitch.craft is not Craft.KNITTING:
            return 0
        if one.place.where is not Where.PLAIN:
            return 0
        takes += one.stitch.takes * (one.number.values[0] if one.number else 1)
    return takes


def edge_beside(nodes: Sequence[Node], stitches: int | None, unit: int) -> int | None:
    """The edge stitches beside a row that is told for one pattern; None where it is not such a
    row.
    """
    if not unit or stitches is None or stitches < 2 * unit or takes_of(nodes) != unit:
        return None
    return stitches % unit
