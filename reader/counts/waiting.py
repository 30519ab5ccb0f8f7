"""Stitches that wait on holders: set aside by one row, taken up again by another, in this piece or
in the one that they are for.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from reader.counts.instep_on_hand import INSTEP_LOT, instep_on_hand
from reader.pattern.holders import ASIDE
from reader.pattern.tree import Act, Deed, Edge, Node, Num, Skip

if TYPE_CHECKING:
    from reader.counts.entries import Entry
    from reader.counts.ledger import Ledger

FOR = re.compile(r"\bfor (?:the |a |your )?(?P<name>[a-z]+(?: [a-z]+)?)\W*$")
"""Behind stitches put aside, for which piece they are: "on a holder for left front"."""


@dataclass(frozen=True, slots=True)
class Lot:
    """Stitches that wait for a piece; its name in small letters."""

    number: int
    name: str


def keep_waiting(ledger: Ledger, nodes: Sequence[Node]) -> None:
    """Keeps what waits after a row of this piece, in the order it was set aside."""
    left = list(ledger.waiting)
    for one in nodes:
        if isinstance(one, Skip) and one.place.text == ASIDE:
            number = one.place.number.at(ledger.size)
            left.append(number)
            named = FOR.search(one.words.lower())
            ledger.lots.append(Lot(number, named["name"] if named else ledger.part.lower()))
        elif isinstance(one, Edge) and one.waited:
            left.clear()
        elif isinstance(one, Edge) and one.cast_on and one.number is not None:
            taken = one.number.at(ledger.size)
            if taken in left:
                left.remove(taken)
    ledger.waiting = tuple(left)


OF_HEEL = re.compile(r"\b(?:heel|flap)\b", re.IGNORECASE)


def keep_instep(ledger: Ledger) -> None:
    """At the end of a heel: what waits while it is made is the instep's."""
    left = sum(ledger.waiting)
    named = any(one.name == INSTEP_LOT for one in ledger.lots)
    if left and (OF_HEEL.search(ledger.part) or not named):
        ledger.lots[:] = [one for one in ledger.lots if one.name != INSTEP_LOT]
        ledger.lots.append(Lot(left, INSTEP_LOT))


def brought(ledger: Ledger, entry: Entry) -> Entry:
    """A first row that takes up the stitches which wait for its piece, "sl sts from holder", with
    their number; as it is where nothing tells which they are.
    """
    entry = instep_on_hand(ledger, _put_already(ledger, entry))
    works = [at for at, one in enumerate(entry.nodes) if not isinstance(one, Act)]
    first = entry.nodes[works[0]] if works else None
    if not isinstance(first, Edge) or not first.waited or ledger.rows or ledger.waiting:
        return entry
    lot = _lot_of(ledger)
    if lot is None:
        return entry
    ledger.lots.remove(lot)
    known = replace(first, number=Num((lot.number,)), waited=False)
    at = works[0]
    return replace(entry, nodes=(*entry.nodes[:at], known, *entry.nodes[at + 1 :]))


def _put_already(ledger: Ledger, entry: Entry) -> Entry:
    """ "Place the remaining 32 sts on a holder" behind words that had them wait already: a note."""
    first = entry.nodes[0] if len(entry.nodes) == 1 else None
    if not isinstance(first, Skip) or first.place.text != ASIDE or not OTHERS.search(first.words):
        return entry
    if not ledger.rows or first.place.number.at(ledger.size) != sum(ledger.waiting):
        return entry
    return replace(entry, nodes=(Act(first.span, first.words, Deed.NOTE),))


OTHERS = re.compile(r"\b(?:rem|remaining|other|rest)\b", re.IGNORECASE)


def _lot_of(ledger: Ledger) -> Lot | None:
    """The lot of that piece's name, else any where all that wait are of one number."""
    part = ledger.part.lower().removesuffix("s")
    for one in ledger.lots:
        if part and one.name.removesuffix("s") == part:
            return one
    return ledger.lots[0] if len({one.number for one in ledger.lots}) == 1 else None
