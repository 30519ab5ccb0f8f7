"""Which space of the row below a place means: "next ch-2 sp", "corner loop", "center of shell"."""

from __future__ import annotations

import re
from collections.abc import Callable

from reader.counts.fabric import (
    GAP,
    PICOT,
    SPACE,
    Held,
    Run,
    any_opening,
    any_picot,
    any_space,
)  # fmt: skip
from reader.counts.walk import Walk
from reader.pattern.tree import ONE, Place, Where

SPACES = frozenset({"sp", "corner"})
UNITS = frozenset({"group", "shell", "fan", "v-st"})
"""Groups that are gone into as one thing, at their middle."""
LOOP = re.compile(r"\b(?:loops?|lps?|ch(?:ain)?s?)\b")
CENTER = re.compile(
    r"^(?:in|into|on|over)? ?(?:the )?(?:cent(?:er|re)|middle|\d(?:st|nd|rd|th)|top) "
    r"(?:h ?d ?c|d ?c|s ?c|tr|st)\b"
)
"""A stitch in a group's middle."""
BETWEEN = re.compile(r"\b(?:between|bet)\b")


def is_opening(place: Place, walk: Walk) -> bool:
    """Whether a place is a space or the middle of a group, not a stitch."""
    if place.noun == "picot" and not walk.named("picot"):
        # A picot is the chain that it is made of.
        return walk.known and walk.opened
    if place.noun in SPACES:
        # Older patterns call the place of a stitch a space; a row without spaces can mean no other.
        return not walk.known or walk.opened
    if place.noun == "group" and CENTER.match(place.text.lower()) and walk.lies_ahead("told", True):
        # "center dc of next dc group": a stitch of a group told stitch by stitch.
        return False
    if place.noun in UNITS and BETWEEN.search(place.text) and walk.chained_apart():
        # "3 dc between next 2 groups", which a chain parts: its space.
        return True
    return (place.noun in UNITS and walk.united) or walk.has("unit", place.noun)


NEXT_OF_CHAIN = re.compile(
    r"\b(?:next|1st|first) (?:ch\b|chain\b|(?:st|stitch) of (?:the )?ch)"
    r"|^(?:over|under|in|into) (?:the |that )?ch(?:ain)?$"
)


def of_chain_ahead(place: Place, walk: Walk) -> bool:
    """Whether "next st of ch" is a chain of the space that the hook stands before; the others of
    that space are passed over with it.
    """
    one = place.noun in ("ch", "tch") and place.number == ONE and not place.each
    return one and walk.at_space() and NEXT_OF_CHAIN.search(place.text.lower()) is not None


def wanted(place: Place, walk: Walk, words: str = "") -> Callable[[Run], bool]:
    """The spaces a place means; where the row has none so named, any."""
    text = (place.text + " " + words).lower()
    if place.noun == "picot":
        return any_picot if walk.has("name", PICOT) else any_space
    grouped = OF_GROUPS.search(text)
    if grouped and place.noun == "sp" and walk.has_held(Held(_kind(grouped["of"]))):
        return Held(_kind(grouped["of"]))
    if "picot lo" in text and place.noun == "sp" and walk.has_held(PICOT_LOOP):
        return PICOT_LOOP
    sized = OF_SIZE.search(text)
    if sized and place.noun == "sp" and walk.middle_size():
        middle = walk.middle_size()
        if sized["size"] in LARGE:
            return lambda run: run.name == SPACE and run.chains > middle
        return lambda run: run.name == SPACE and run.chains < middle
    if place.noun in UNITS or walk.has("unit", place.noun):
        return _unit(place.noun, text, walk)
    unit = OF_UNIT.search(text) if place.noun == "sp" else None
    if unit and walk.has("unit", unit["of"]):
        # "next ch-2 sp of shell", and not the one between two shells.
        return lambda run: run.unit == unit["of"]
    if place.chain and walk.has("chains", place.chain):
        return lambda run: run.chains == place.chain
    if "corner" in text and walk.lies_ahead("corner", True):
        return lambda run: run.corner
    if "corner" in text and walk.has("corner", True) and place.where is not Where.SAME:
        # The last corner lies behind: no gap between two stitches stands for another.
        return any_space
    if not walk.has("space", True) and walk.has("name", PICOT):
        return any_picot
    return any_space if LOOP.search(text) and not BETWEEN.search(text) else any_opening


PICOT_LOOP = Held("sc", 1)
LARGE = frozenset(("large", "larger", "big", "bigger", "long", "longer"))
OF_SIZE = re.compile(
    r"\b(?P<size>large|larger|big|bigger|long|longer|small|smaller|short|shorter|little)"
    r" (?:ch(?:ain)? ?|\d+[- ]ch(?:ain)? ?)?(?:loop|lp|sp|space)s?\b"
)
"""Loops told apart by their size alone."""
OF_GROUPS = re.compile(
    r"\b(?:between|bet)(?: (?:the|next|two|2|each))* (?P<of>h ?d ?c|d ?c|s ?c|d ?tr|tr(?: ?c)?)"
    r"[- ](?:groups?|grps?)\b"
)


OF_UNIT = re.compile(
    r"\b(?:sps?|spaces?|loops?) (?:of|in) (?:(?:the|next|each|same|1st|first|last|every) )*"
    r"(?P<of>shell|fan|v-st)s?\b"
)


def _kind(said: str) -> str:
    short = said.replace(" ", "")
    return "tr" if short == "trc" else short


def _unit(noun: str, text: str, walk: Walk) -> Callable[[Run], bool]:
    if BETWEEN.search(text):
        apart = SPACE if walk.chained_apart() else GAP
        return lambda run: run.name == apart and not run.unit
    if walk.lies_ahead("unit", noun):
        return lambda run: run.unit == noun
    return lambda run: bool(run.unit)
