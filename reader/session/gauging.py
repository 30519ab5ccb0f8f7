"""Gauge and yarn: the stitches a maker counts over a length, and how far the yarn has gone."""

from __future__ import annotations

from dataclasses import replace

from reader.commands.command import Command
from reader.plan import find
from reader.plan.gauge import wanted_gauge
from reader.plan.yarn import ColourShare, colour_shares, grams_of, yarns_of
from reader.session.effects import Saying
from reader.session.speaking import Out, say
from reader.session.state import Mode, State


def begin(state: State, command: Command) -> Out:
    """Says the pattern's gauge and asks for the maker's; one that is no stitches over a length is
    read, and without any it says so.
    """
    if wanted_gauge(state.plan) is None:
        kind = "gauge read" if state.plan.gauge else "no gauge"
        return say(replace(state, mode=Mode.STEP), Saying(kind))
    return say(replace(state, mode=Mode.GAUGE_NUMBER), Saying("gauge asked"))


def told(state: State, number: int) -> Out:
    """What the maker's stitches mean for hook or needles and for the finished size."""
    return say(replace(state, mode=Mode.STEP), Saying("gauge", number=number))


def yarn(state: State, command: Command) -> Out:
    """How much of each colour is worked; where the weight is known, asks what is left."""
    told = Saying("yarn", state.place)
    if grams_listed(state) is None or present_share(state) is None:
        return say(state, told)
    return say(replace(state, mode=Mode.YARN_NUMBER), told, Saying("grams asked", state.place))


def grams_told(state: State, number: int) -> Out:
    """Whether the yarn in hand lasts, from the grams that are left."""
    return say(replace(state, mode=Mode.STEP), Saying("lasts", state.place, number))


def present_colour(state: State) -> str:
    """The colour in hand: that of this row, else of the next worked row of the part."""
    rows = find.part_at(state.plan, state.place).rows[state.place.row :]
    return next((row.colour for row in rows if row.colour), "")


def present_share(state: State) -> ColourShare | None:
    """How far the colour in hand is worked; None before any of it is."""
    colour = present_colour(state)
    shares = colour_shares(state.plan, state.place)
    found = next((one for one in shares if one.colour == colour), None)
    return found if found and found.worked > 0 else None


def grams_listed(state: State) -> float | None:
    """The grams of the present colour on the list; None where it tells none."""
    yarns = yarns_of(state.plan, present_colour(state))
    return next((grams for item in yarns if (grams := grams_of(item))), None)
