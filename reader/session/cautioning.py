"""Cautions: each said once, before the row that it is about; where none is, after the first row."""

from __future__ import annotations

from dataclasses import replace

from reader.plan.place import Place
from reader.session.effects import Saying
from reader.session.state import State


def cautioned(state: State, to: Place) -> tuple[State, tuple[Saying, ...]]:
    """What is due at this place and was not said yet, and the state in which it has been said."""
    if not state.tastes.cautions:
        return state, ()
    here = (to.part, to.row)
    due = [
        at
        for at, row in enumerate(state.plan.caution_rows)
        if at not in state.cautions_told and row <= here
    ]
    told = replace(state, cautions_told=state.cautions_told | frozenset(due))
    return told, tuple(Saying("caution", to, words=state.plan.cautions[at]) for at in due)
