"""Stitches that wait on holders: set aside by one row, taken up again by another, in this piece or
in the one that they are for.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from reader.counts.closing_gap import over_gaps
from reader.counts.fabric import plain
from reader.counts.instep_on_hand import INSTEP_LOT, instep_on_hand
from reader.counts.new_worked_over import new_worked_over
from reader.pattern.holders import ASIDE
from reader.pattern.tree import Act, Deed, Edge, LeaveRest, Node, Num, Skip, Work

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


ON_HOLDER = re.compile(r"\bholders?\b|\b(?:waste|scrap) yarn\b|\bspare\b", re.IGNORECASE)
WHICH = re.compile(
    r"\b(?:(?P<nth>1st|2nd|3rd|first|second|third)|both|all|holders)\b", re.IGNORECASE
)
NTH = {"1": 0, "f": 0, "2": 1, "s": 1, "3": 2, "t": 2}


def waiting_for(waiting: Sequence[int], nodes: Sequence[Node]) -> int:
    """How many come back with a row that takes up what waits, "sts from 2nd holder", "from both
    holders"; 0 where nothing tells which of several lots they are.
    """
    which = _which_lots(waiting, nodes)
    return sum(waiting[at] for at in which)


def _which_lots(waiting: Sequence[int], nodes: Sequence[Node]) -> tuple[int, ...]:
    if len(waiting) < 2:
        return tuple(range(len(waiting)))
    words = " ".join(one.words for one in nodes if isinstance(one, Edge) and one.waited)
    told = WHICH.search(words)
    if told is None:
        return ()
    nth = NTH[told["nth"][0].lower()] if told["nth"] else None
    if nth is None:
        return tuple(range(len(waiting)))
    return (nth,) if nth < len(waiting) else ()


def keep_waiting(
    ledger: Ledger, nodes: Sequence[Node], before: int | None = None, count: int | None = None
) -> None:
    """Keeps what waits after a row of this piece, in the order it was set aside; before, count: the
    stitches before and after the row.
    """
    left = list(ledger.waiting)
    for one in nodes:
        if isinstance(one, Skip) and one.place.text == ASIDE:
            number = one.place.number.at(ledger.size)
            left.append(number)
            named = FOR.search(one.words.lower())
            ledger.lots.append(Lot(number, named["name"] if named else ledger.part.lower()))
        elif isinstance(one, LeaveRest) and ON_HOLDER.search(one.words):
            rest = _rest_of(ledger, nodes, before, count)
            left += [rest] if rest else []
        elif isinstance(one, Edge) and one.waited:
            gone = _which_lots(left, nodes) or range(len(left))
            left = [number for at, number in enumerate(left) if at not in gone]
        elif isinstance(one, Edge) and one.cast_on and one.number is not None:
            taken = one.number.at(ledger.size)
            if taken in left:
                left.remove(taken)
    ledger.waiting = tuple(left)


def _rest_of(
    ledger: Ledger, nodes: Sequence[Node], before: int | None, count: int | None
) -> int:
    """How many stitches a row left behind those that it worked, one for one, and set aside; 0 where
    it did anything else.
    """
    if before is None or count is None:
        return 0
    for one in nodes:
        apart = isinstance(one, Skip) and one.place.text == ASIDE
        plain = isinstance(one, Work) and one.stitch.takes == one.stitch.makes == 1
        if not (apart or plain or isinstance(one, Act | LeaveRest)):
            return 0
    aside = [one for one in nodes if isinstance(one, Skip)]
    return max(0, before - count - sum(one.place.number.at(ledger.size) for one in aside))


DRAWN = re.compile(
    r"\b(?:draw|pull|run|pass|thread|gather)(?:ing)?\b[^.;]{0,60}?\b(?:(?:sts?|stitches|loops)\b"
    r"[^.;]{0,20}?\b(?:tog(?:ether)?|up|tight\w*)|(?:through|thru)\b[^.;]{0,30}?\b(?:sts|stitches"
    r"|loops))\b[^.;]{0,60}[.;]\W*"
    r"(?:(?:then |and )?(?:fasten|secure|sew|pull|weave)\b[^.;]{0,60}[.;]\W*){0,2}"
    r"(?:(?:next|\d+\w\w) (?:row|round|rnd):\s*)?$", re.IGNORECASE,
)
"""How stitches end that are not bound off: what is worked next begins without them."""
LOOK_BACK = 240
"""Characters before a row in which that is told."""
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
    entry = over_gaps(ledger, new_worked_over(ledger, entry))
    works = [at for at, one in enumerate(entry.nodes) if not isinstance(one, Act)]
    first = entry.nodes[works[0]] if works else None
    if not isinstance(first, Edge) or not first.waited:
        return entry
    at = entry.row.start
    if ledger.rows and DRAWN.search(ledger.text, max(0, at - LOOK_BACK), at):
        ledger.below = plain(0, ledger.below.sections)
    if ledger.rows or ledger.waiting:
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
