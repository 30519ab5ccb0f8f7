"""The way back of a short row: the row before was turned before its end, so that fewer stitches
than are on hand are worked, and none is missing.
"""

from __future__ import annotations

from dataclasses import replace

from reader.counts.entries import Entry
from reader.counts.fabric import Below
from reader.pattern.tree import Act, ShortTurn, Where, Work
from reader.terms.stitches import Craft


def way_back(entry: Entry, below: Below, left: int, size: int) -> Entry:
    """The row as one that ends where the stitches do that the row before worked, where it is told
    by numbers that come to just so many; left: those that the row before left.
    """
    works = [one for one in entry.nodes if not isinstance(one, Act)]
    if not left or below.stitches is None or not works:
        return entry
    takes = 0
    for one in works:
        if not isinstance(one, Work) or one.place.where is not Where.PLAIN:
            return entry
        if one.stitch.craft is not Craft.KNITTING or (one.number is None and one.stitch.takes == 1):
            return entry
        takes += one.stitch.takes * (one.number.at(size) if one.number else 1)
    if takes != below.stitches - left:
        return entry
    turn = ShortTurn(entry.nodes[-1].span, "")
    return replace(entry, nodes=(*entry.nodes, turn))
