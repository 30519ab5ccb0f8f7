"""Gathering: the list of what is needed, read one by one and ticked off by voice."""

from __future__ import annotations

from dataclasses import replace

from reader.commands.command import Ask, Command
from reader.session.effects import Save, Saying
from reader.session.speaking import Out, say
from reader.session.state import Mode, State


def begin(state: State, command: Command) -> Out:
    """Reads the first thing that is not ticked yet, after how many there are."""
    if not state.plan.gather:
        return say(replace(state, mode=Mode.STEP), Saying("nothing to gather"))
    at = _open(state, 0)
    if at is None:
        return say(replace(state, mode=Mode.STEP), Saying("all gathered"))
    head = Saying("gathering", number=len(state.plan.gather) - len(state.ticked))
    return say(replace(state, mode=Mode.GATHER, gather_at=at), head, Saying("item", number=at))


def answered(state: State, command: Command) -> Out:
    """Yes ticks the thing off, no leaves it, and the next is read; at the end what is missing.

    Asked to explain, it says what the yarn's weight means.
    """
    if command.ask is Ask.EXPLAIN:
        return say(state, Saying("item explained", number=state.gather_at))
    ticked = state.ticked
    if command.ask is Ask.YES:
        ticked = ticked | {state.gather_at}
    state = replace(state, ticked=ticked)
    at = _open(state, state.gather_at + 1)
    if at is None:
        done = replace(state, mode=Mode.STEP)
        return say(done, Saying("missing"), before=(Save(),))
    return say(replace(state, gather_at=at), Saying("item", number=at), before=(Save(),))


def _open(state: State, first: int) -> int | None:
    """The next thing from there on that is not ticked."""
    things = range(first, len(state.plan.gather))
    return next((at for at in things if at not in state.ticked), None)
