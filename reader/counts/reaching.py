"""Places that reach as far as there is room: "in each", "to the end", "to last 2 sts"."""

from __future__ import annotations

from reader.counts.fabric import GAP, any_opening
from reader.counts.openings import BETWEEN, SPACES, UNITS, is_opening, wanted
from reader.counts.tally import Need, Tally
from reader.counts.walk import Walk
from reader.pattern.tree import Place, Where

PLAIN = frozenset(["sc", "hdc", "dc", "tr", "dtr", "trtr"])
"""Stitches whose kind is seen; what a group is made of the row below does not tell."""
CLUSTERS = ("cluster", "popcorn", "puff", "bobble", "picot")


def all_places(
    place: Place, tally: Tally, need: Need, limit: tuple[int, int] | None
) -> tuple[int, int]:
    """Takes "each", "to end", "to last n": how many places that are, and how many stitches of them.

    need: what the instructions behind will use. limit: stitches and spaces up to where they begin,
    None for the row's end.
    """
    walk = tally.walk
    nouns = {place.noun, *place.among}
    if nouns <= SPACES or is_opening(place, walk):
        return _all_openings(place, tally, need), 0
    if walk.left is None:
        tally.unsure = True
        return 0, 0
    inside = place.remaining or limit is not None or (tally.cycle and walk.opened)
    if place.where is Where.TO_LAST and inside:
        here = _to_last_of_section(place, tally)
    elif place.where is Where.TO_LAST:
        here = max(0, walk.left - max(place.number.at(tally.size), need.stitches))
    else:
        here = max(0, walk.left - need.stitches)
    places = here
    if limit is not None:
        here = min(here, limit[0])
        places, here = of_kind(place, walk, here)
    elif walk.before and place.where is Where.EACH:
        # What lay before the round's beginning is not worked again at its end.
        places, _ = of_kind(place, walk, max(0, here - walk.before))
    if place.noun in CLUSTERS and walk.named(place.noun) and place.where is Where.EACH:
        places = walk.named(place.noun)
    if place.noun in UNITS and place.where is Where.EACH and walk.lies_ahead("told", True):
        # "3 dc in each sp between 2-dc groups": as many as groups.
        places = walk.units_ahead("group")
    ahead = walk.ahead()
    gaps = sum(run.n for run in ahead if run.name == GAP)
    if gaps and place.noun in UNITS and BETWEEN.search(place.text):
        # "2 dc between each group": where one ends and the next begins.
        places = gaps
    if "ch" in place.among or (place.noun == "ch" and place.among):
        places += sum(run.n * run.chains for run in ahead)
    elif nouns & SPACES:
        places += walk.spaces if limit is None else limit[1]
    walk.take(here)
    return places, here


def _to_last_of_section(place: Place, tally: Tally) -> int:
    """Stitches up to the last ones of a section between two openings, as amid a repeat."""
    left = tally.walk.left or 0
    section = tally.walk.to_next(any_opening)
    here = min(section[0], left) if section is not None else left
    return max(0, here - place.number.at(tally.size))


def _all_openings(place: Place, tally: Tally, need: Need) -> int:
    walk = tally.walk
    if not walk.known:
        tally.unsure = True
        return 0
    which = wanted(place, walk)
    places = max(0, walk.count_spaces(which) - need.spaces)
    walk.take_spaces(places, which)
    tally.spaced = True
    if place.nth > 1:
        # Whether the first or the second of them begins is told only by a number that divides.
        tally.unsure = tally.unsure or places % place.nth != 0
        return places // place.nth
    return places


def of_kind(place: Place, walk: Walk, here: int) -> tuple[int, int]:
    """Of the next `here` stitches those of the kind that is named, and how far the last of them is:
    "1 tr in each tr" before a shell goes over the shell's own stitches.
    """
    found = last = at = 0
    for run in walk.ahead():
        if not run.is_stitch or at >= here:
            continue
        if run.name not in PLAIN:
            return here, here
        number = min(run.n, here - at)
        at += number
        if run.name == place.noun:
            found, last = found + number, at
    named = place.where is Where.EACH and 0 < found < here
    return (found, last) if named else (here, here)
