"""Rows that are worked into an earlier row than the one below: "* ch 7, 2 dc over dc of 2nd row"
-> that row, as it lay before the rows since.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import TYPE_CHECKING

from reader.counts.fabric import Below
from reader.pattern.tree import Chain, Group, Node, Repeat, Where, Work
from reader.terms.stitches import Craft
from reader.text.sought import Sought

if TYPE_CHECKING:
    from reader.counts.entries import Entry
    from reader.counts.ledger import Ledger

OF_ROW = Sought(
    (" row", " rnd", " round"),
    r"\b(?:of|in|on|from) (?:the )?(?:(?P<a>\d{1,3})(?:st|nd|rd|th|d) (?:row|rnd|round)"
    r"|(?:row|rnd|round) (?P<b>\d{1,3}))\b(?! below)",
)
ALONG = (Where.NEXT, Where.PLAIN, Where.FIRST, Where.EACH, Where.ONE_PLACE)


def earlier_row(ledger: Ledger, entry: Entry) -> Below | None:
    """The earlier row that every place of a row names; None where it is the row below, or where
    only some are. Nothing known where that row was not counted.
    """
    if ledger.pattern.craft is not Craft.CROCHET or not ledger.number:
        return None
    places = _places(entry.nodes)
    told = next(map(_row_named, places), 0)
    if not 0 < told < ledger.number or any(_row_named(one) != told for one in places):
        return None
    over = next((one.base for one in reversed(ledger.entries) if one.number == told + 1), None)
    return over if over is not None else Below()


def _row_named(one: Work | Group) -> int:
    found = OF_ROW.search(f"{one.words} {one.place.text}".lower())
    return int(found["a"] or found["b"]) if found else 0


def _places(nodes: Sequence[Node]) -> Iterator[Work | Group]:
    """What goes into the row; not what is worked back along a chain just made."""
    chained, back = 0, 0
    for one in nodes:
        if isinstance(one, Repeat):
            yield from _places((*one.body, *one.ending))
        elif isinstance(one, Work) and one.place.where is Where.CHAIN and chained:
            back = chained - one.place.nth
        elif isinstance(one, Work | Group) and one.place.where in ALONG:
            if back > 0 and one.place.noun in ("st", "ch", "tch"):
                back -= one.place.number.values[0]
            else:
                yield one
        chained = one.number.values[0] if isinstance(one, Chain) else 0
