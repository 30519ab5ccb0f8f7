"""An over and the decrease behind it that is told so often, "over, narrow twice": the over may be
worked as often, which only the rows that follow can tell.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from reader.pattern.tree import Act, Node, Repeat, Until, Work
from reader.terms.stitches import Craft, Kind


def more_overs(nodes: Sequence[Node], size: int) -> int:
    """How many stitches more a knitted row makes if each such over is worked as often as the
    decrease behind it; 0 where none stands.
    """
    told = [one for one in nodes if not isinstance(one, Act)]
    more = 0
    for before, one in pairwise(told):
        if isinstance(before, Work) and isinstance(one, Work) and _pair(before, one):
            often = one.by.at(size) if one.by is not None else 1
            more += (often - 1) * (before.number.at(size) if before.number is not None else 1)
        elif isinstance(one, Repeat) and one.until is Until.TIMES:
            more += one.number.at(size) * more_overs(one.body, size)
    return more


def _pair(before: Work, one: Work) -> bool:
    """Whether an over stands before a decrease that is counted as times."""
    knits = one.stitch.craft is Craft.KNITTING and one.by is not None
    narrows = one.stitch.kind is Kind.DECREASE or one.stitch.takes > one.stitch.makes
    return knits and narrows and before.stitch.takes == 0 and before.stitch.makes == 1
