"""Gauge and yarn: the stitches a maker counts over a length, and how far the yarn has gone."""

from __future__ import annotations

from dataclasses import replace

from reader.commands.command import Command
from reader.plan.gauge import wanted_gauge
from reader.session.effects import Saying
from reader.session.speaking import Out, say
from reader.session.state import Mode, State


def begin(state: State, command: Command) -> Out:
    """Says the pattern's gauge and asks for the maker's; without one it says so."""
    if wanted_gauge(state.plan) is None:
        return say(replace(state, mode=Mode.STEP), Saying("no gauge"))
    return say(replace(state, mode=Mode.GAUGE_NUMBER), Saying("gauge asked"))


def told(state: State, number: int) -> Out:
    """What the maker's stitches mean for hook or needles and for the finished size."""
    return say(replace(state, mode=Mode.STEP), Saying("gauge", number=number))


def yarn(state: State, command: Command) -> Out:
    """How much of each colour is worked, and what the rest should need."""
    return say(state, Saying("yarn", state.place))
