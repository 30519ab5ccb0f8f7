"""A search for a slip in a row -> the sentences that ask for a count and tell what was found."""

from __future__ import annotations

from reader.plan.mismatch import ask
from reader.session.effects import Saying
from reader.session.searching import looked_into
from reader.session.state import State
from reader.wording.mismatch_words import say_choice, say_found, say_stop
from reader.wording.place_words import noun_of


def stop_asked(one: Saying, state: State) -> str:
    """Up to where the maker should count now."""
    found = looked_into(state)
    stop = ask(found, state.search) if found and state.search else None
    return say_stop(found, stop, noun_of(one, state)) if found and stop else ""


def found_told(one: Saying, state: State) -> str:
    """Where the slip is, and what can be done about it."""
    found = looked_into(state)
    if not found or not state.search:
        return ""
    noun = noun_of(one, state)
    return f"{say_found(found, state.search)} {say_choice(found, noun)}"
