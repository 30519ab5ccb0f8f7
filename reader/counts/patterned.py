"""Rows told for one pattern only: "15 stitches to a pattern", so that a row of 15 stitches is
worked again and again, and what is over is the edge.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from functools import lru_cache

from reader.counts.openings import SPACES, UNITS
from reader.pattern.tree import Act, Node, Repeat, Until, Where, Work
from reader.terms.numbers import SPELLED, word_number
from reader.terms.stitches import Craft, Kind

_WHAT = r"(?:pattern|repeat|scallop|leaf|stripe|flower|shell|vandyke|division)\b"
_STS = r"(?:stitches|sts|loops)"
UNIT = re.compile(
    rf"\b(?P<n>\d+|{SPELLED})\s+{_STS}\s+(?:(?:(?:are\s+)?(?:required\s+|needed\s+|used\s+|allowed"
    r"\s+)?(?:to|for|in)\s+(?:a|each|every|one|the)\s+)|(?:form|make|complete)s?\s+(?:up\s+)?"
    rf"(?:a|each|every|one|the)\s+){_WHAT}"
    rf"|\b{_WHAT}[^.;\d]{{0,24}}?\b(?:is|are|consists?|takes?|requires?|needs?|has|worked|over)\s+"
    rf"(?:of\s+|over\s+)?(?P<m>\d+|{SPELLED})\s+{_STS}"
    rf"|\bmultiples?\s+of\s+(?P<o>\d+|{SPELLED})\b",
    re.IGNORECASE,
)
"""Stitches that one pattern takes: "9 stitches form the pattern", "the pattern is of 16 stitches",
"multiple of 8 sts".
"""


@lru_cache(maxsize=4)
def _units(text: str) -> tuple[tuple[int, int], ...]:
    """Each place of a text that tells of a pattern's stitches, and how many they are."""
    told: list[tuple[int, int]] = []
    for found in UNIT.finditer(text):
        said = found.group("n") or found.group("m") or found.group("o")
        told.append((found.end(), int(said[:4]) if said.isdigit() else word_number(said) or 0))
    return tuple(told)


def unit_before(text: str, at: int) -> int:
    """The stitches of one pattern that were told of last before a place; 0 where none were."""
    for place, number in reversed(_units(text)):
        if place <= at:
            return number
    return 0


def _along(work: Work) -> int:
    """The stitches that a crocheted instruction goes along, "sc in each of 2 sts"; 0 where it does
    not say, or goes elsewhere.
    """
    place, number = work.place, work.number.values[0] if work.number else 1
    if work.stitch.kind is Kind.SLIP or place.noun in SPACES | UNITS:
        return 0
    if place.where is Where.PLAIN:
        return number * work.stitch.takes
    if place.where not in (Where.NEXT, Where.FIRST) or place.nth > 1:
        return 0
    return max(place.number.values[0], work.stitch.takes)


def takes_of(nodes: Sequence[Node]) -> int:
    """The stitches that a list of plain numbers takes, or one that goes from stitch to stitch; 0
    for anything else.
    """
    takes = 0
    works = [one for one in nodes if not isinstance(one, Act)]
    if len(works) == 1 and isinstance(works[0], Repeat) and works[0].until is Until.OPEN:
        return 0 if works[0].has_ending else takes_of(works[0].body)
    for one in nodes:
        if isinstance(one, Act):
            continue
        if isinstance(one, Repeat) and one.until is Until.TIMES and not one.has_ending:
            takes += one.number.values[0] * takes_of(one.body)
            continue
        if not isinstance(one, Work):
            return 0
        if one.stitch.craft is not Craft.KNITTING:
            here = _along(one)
            if not here:
                return 0
            takes += here
            continue
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
