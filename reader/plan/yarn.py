"""A plan and a place in, how much of the yarn of each colour is worked out, and whether it will
last.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from reader.plan.place import Place
from reader.plan.step import GatherItem, Plan, PlanRow, RowKind, Step

STITCH_COST = {
    "ch": 0.4, "sl st": 0.5, "sc": 1.0, "hdc": 1.3, "dc": 1.6, "tr": 2.1, "dtr": 2.7, "trtr": 3.3,
    "inc": 1.0, "bobble": 4.0, "popcorn": 4.0, "puff": 3.0, "cluster": 3.0, "picot": 1.6,
}  # fmt: skip
"""Yarn in a stitch as a share of a single crochet's; knitting stitches count 1. From memory: a
single
crochet takes about 3 to 4 stitch widths of yarn and a double crochet about 5 to 6; the rest is
ours."""

MOST_ROWS = 1500
"""Rows up to which every stitch is weighed; longer plans go by the rows' counts."""

_WEIGHT = r"(?P<amount>\d+(?:\.\d+)?)[\s-]*(?P<unit>g|gr|grams?|oz|ounces?)\b"
_BALLS = r"(?:balls?|skeins?|hanks?|cones?)"
_GRAMS = re.compile(_WEIGHT, re.IGNORECASE)
_EACH = tuple(
    re.compile(form, re.IGNORECASE)
    for form in (
        rf"(?<![\d.])(?P<many>\d{{1,2}})\s*[x×]\s*{_WEIGHT}",
        rf"(?<![\d.])(?P<many>\d{{1,2}})[\s(]+{_WEIGHT}\s*\)?\s*{_BALLS}\b",
        rf"{_WEIGHT}\s*(?:/\s*\d+\s*[a-z]+\s*)?(?:per\s+)?{_BALLS}\)?\s*[:,]\s*(?P<many>\d{{1,2}})\b",
        rf"(?<![\d.])(?P<many>\d{{1,2}})\s*{_BALLS}\s*(?:of|at)\s*{_WEIGHT}",
        rf"(?<![\d.])(?P<many>\d{{1,2}})\s*{_BALLS}\b[^\d]{{0,30}}{_WEIGHT}\s*(?:each|per|/)",
    )
)
"""So many balls of a weight each: "3 x 50 g", "2 (100 g) skeins", "100 g balls: 6", "4 balls of
50 g", "2 balls (50 g each)"."""
_MANY_BALLS = re.compile(rf"(?<![\d.])(?:[2-9]|\d\d)\s*{_BALLS}\b[^\d]{{0,30}}\d", re.IGNORECASE)
GRAMS_PER_OUNCE = 28.35
"""By definition, rounded."""
LETTERS = 3
"""Signs up to which a colour's name is a letter of the pattern's own: A, MC, CC2."""


@dataclass(frozen=True, slots=True)
class ColourShare:
    """One colour ("" where the pattern names none): yarn worked so far and in all, in single
    crochets' worth.
    """

    colour: str
    worked: float
    total: float

    @property
    def share(self) -> float:
        """Worked of all, 0 to 1; 0 where there is nothing to work."""
        return self.worked / self.total if self.total else 0.0


@dataclass(frozen=True, slots=True)
class YarnLeft:
    """What is left of a yarn and what the rest needs, in the unit it was told in (grams, or a
    share of 1).
    """

    left: float
    needed: float

    @property
    def lasts(self) -> bool:
        """Whether what is left covers what is needed."""
        return self.left >= self.needed


def colour_shares(plan: Plan, place: Place) -> tuple[ColourShare, ...]:
    """Each colour's yarn up to a place, in the order the colours come; () for a plan without
    stitches.
    """
    weighed = sum(len(part.rows) for part in plan.parts) <= MOST_ROWS
    worked: dict[str, float] = {}
    total: dict[str, float] = {}
    for index, part in enumerate(plan.parts):
        now = ""
        for number, row in enumerate(part.rows):
            now = row.colour or now
            if row.kind is not RowKind.WORK:
                continue
            cost = _row_cost(row, weighed)
            total[now] = total.get(now, 0.0) + cost
            done = _done_of(row, (index, number), place, cost)
            worked[now] = worked.get(now, 0.0) + done
    return tuple(ColourShare(c, worked[c], total[c]) for c in total if total[c] > 0)


def will_last(share: float, used: float, left: float) -> YarnLeft | None:
    """Whether a yarn lasts, from the share of its stitches worked and what they used up.

    share: 0 to 1. used, left: in one unit. None before anything is worked, when nothing can be
    told.
    """
    if share <= 0 or used <= 0:
        return None
    return YarnLeft(left, used * (1 - min(share, 1.0)) / min(share, 1.0))


def grams_of(item: GatherItem) -> float | None:
    """The grams that an item of the gathering list asks for; None where it tells no weight, or
    where it may be that of one ball or of all ("3 balls (50 g)").
    """
    each = next((found for form in _EACH if (found := form.search(item.text))), None)
    if each is not None:
        return int(each["many"]) * _grams(each)
    found = _GRAMS.search(item.text)
    if found is None or _MANY_BALLS.search(item.text[: found.end()]):
        return None
    return _grams(found)


def _grams(found: re.Match[str]) -> float:
    amount = float(found["amount"])
    return amount if found["unit"].lower().startswith("g") else amount * GRAMS_PER_OUNCE


def yarns_of(plan: Plan, colour: str) -> tuple[GatherItem, ...]:
    """The yarns on the list that bear a colour's name; the only yarn where none bears it.

    A letter must stand alone and as written: colour "B" is in "Bracken (B)", not in "balls".
    """
    yarns = [item for item in plan.gather if item.kind == "yarn"]
    short = len(colour) <= LETTERS
    named = re.compile(rf"(?<!\w){re.escape(colour)}(?!\w)", re.NOFLAG if short else re.IGNORECASE)
    found = [item for item in yarns if colour and named.search(item.text)]
    return tuple(found or (yarns if len(yarns) == 1 else []))


def grams_left(item: GatherItem, share: ColourShare) -> float | None:
    """Grams of an item that the rest of its colour should need, by stitch share; None without a
    weight.
    """
    grams = grams_of(item)
    return None if grams is None else grams * (1 - share.share)


def _row_cost(row: PlanRow, weighed: bool) -> float:
    if not weighed:
        return float(row.count or row.count_before or 0)
    return sum(_step_cost(step) for step in row.groups) or float(row.count or 0)


def _step_cost(step: Step) -> float:
    return sum(
        STITCH_COST.get(move.stitch, 1.0) * max(move.makes, move.times if move.makes else 0)
        for move in step.moves
    )


def _done_of(row: PlanRow, at: tuple[int, int], place: Place, cost: float) -> float:
    """How much of a row's yarn is worked when the maker stands at `place`."""
    here = (place.part, place.row)
    if at < here:
        return cost
    if at > here:
        return 0.0
    steps = row.groups
    share = min(place.step, len(steps)) / len(steps) if len(steps) else 0.0
    counted = steps[place.step] if place.step < len(steps) else None
    if counted is not None and counted.total:
        share = counted.done / counted.total
    return cost * share
