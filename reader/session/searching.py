"""Searching: the count is wrong, and the maker is helped to find in which pass the slip is."""

from __future__ import annotations

from dataclasses import replace

from reader.plan.mismatch import Mismatch, answered, ask, compare, start_search
from reader.session.effects import Saying
from reader.session.speaking import Out, say
from reader.session.state import Mode, State


def looked_into(state: State) -> Mismatch | None:
    """What the maker's count says of the row it is about; None where no search is on."""
    at = state.have_at or state.place
    return None if state.have is None else compare(state.plan, at, state.have)


def can_search(found: Mismatch) -> bool:
    """Whether there are spots between which the slip can be narrowed down."""
    return start_search(found) is not None


def begin(state: State, have: int) -> Out:
    """The first spot to count up to, half way."""
    state = replace(state, have=have)
    found = looked_into(state)
    return _next(replace(state, search=start_search(found) if found else None))


def counted(state: State, number: int) -> Out:
    """The maker counted so many up to the spot that was asked about."""
    found = looked_into(state)
    if found is None or state.search is None:
        return say(replace(state, mode=Mode.STEP), Saying("count unknown", state.place))
    return _next(replace(state, search=answered(found, state.search, number)))


def asked_count(state: State) -> int | None:
    """The stitches there should be up to the spot asked about."""
    found = looked_into(state)
    stop = ask(found, state.search) if found and state.search else None
    return stop.count if stop else None


def _next(state: State) -> Out:
    if state.search is None:
        return say(replace(state, mode=Mode.STEP), Saying("count unknown", state.place))
    if asked_count(state) is None:
        return say(replace(state, mode=Mode.STEP), Saying("slip found", state.have_at))
    return say(replace(state, mode=Mode.FIND_NUMBER), Saying("count here", state.have_at))
