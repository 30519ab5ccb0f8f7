"""Slip stitches that alternate with others, "* hdc in next st, sl st in next st; rep from *": each
is a stitch of the row, that the next one is worked into.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from reader.pattern.tree import Act, Node, Repeat, Until, Where, Work
from reader.terms.stitches import Craft, Kind


def as_stitches(nodes: Sequence[Node]) -> list[Node]:
    """The row with such slip stitches as stitches; any other row as it is."""
    return [_repeated(one) if isinstance(one, Repeat) else one for one in nodes]


def _repeated(node: Repeat) -> Repeat:
    works = [one for one in node.body if not isinstance(one, Act)]
    on_slips = any(isinstance(one, Work) and one.place.noun == "sl st" for one in works)
    nouns = ("st", "hdc", "sc", *(("dc", "tr", "sl st") if on_slips else ()))
    plain = [one for one in works if isinstance(one, Work) and _one_in_next(one, nouns)]
    slips = [one for one in plain if one.stitch.kind is Kind.SLIP]
    alternate = 0 < len(slips) < len(plain) == len(works)
    if not alternate or node.until not in (Until.OPEN, Until.TO_LAST):
        return node
    body = tuple(
        replace(one, stitch=replace(one.stitch, makes=1, kind=Kind.STITCH))
        if isinstance(one, Work) and one.stitch.kind is Kind.SLIP
        else one
        for one in node.body
    )
    return replace(node, body=body)


def _one_in_next(one: Work, nouns: tuple[str, ...]) -> bool:
    """Whether a crocheted stitch goes into the next one, so named, alone in it."""
    alone = one.number is None or one.place.where is Where.PLAIN or one.number.values == (1,)
    kind = one.stitch.kind is Kind.SLIP or one.stitch.takes == one.stitch.makes == 1
    placed = one.place.where in (Where.NEXT, Where.PLAIN) and one.place.noun in nouns
    return alone and kind and placed and one.stitch.craft is Craft.CROCHET
