"""Saying things: numbers the texts, remembers the last, stops what is being said."""

from __future__ import annotations

from dataclasses import replace

from reader.session.effects import Effect, Say, Saying, Show, StopTalking
from reader.session.state import State

Out = tuple[State, tuple[Effect, ...]]


def say(
    state: State,
    *sayings: Saying,
    before: tuple[Effect, ...] = (),
    after: tuple[Effect, ...] = (),
    soft: bool = False,
) -> Out:
    """The state in which these are being said, and the effects: what was being said stops first.

    soft: in a low voice.
    """
    stop: tuple[Effect, ...] = (StopTalking(),) if state.talking else ()
    said = state.said + 1
    state = replace(state, said=said, talking=True, last=sayings)
    return state, (*stop, *before, Show(), Say(said, sayings, soft), *after)


def quiet(state: State) -> Out:
    """Silence; nothing is asked any more."""
    stop: tuple[Effect, ...] = (StopTalking(),) if state.talking else ()
    return replace(state, talking=False), (*stop, Show())
