"""Timing: what time alone brings about; with pace aloud on, a word when the row should be done."""

from __future__ import annotations

from dataclasses import replace

from reader.commands.command import Command
from reader.plan import find
from reader.plan.pace import row_left_s
from reader.plan.step import RowKind
from reader.session import noting
from reader.session.effects import Saying
from reader.session.noting import SOUND_S
from reader.session.speaking import Out, say
from reader.session.state import Mode, State


def switched(state: State, command: Command) -> Out:
    """Pace aloud on or off."""
    on = not state.timing
    return say(replace(state, timing=on), Saying("pace on" if on else "pace off"))


def time_went(state: State) -> Out:
    """Nothing moves; once a row, when it should be about done, this is said, and never again.

    Silent while paused, not listening, in a question or speaking, and before the pace is known.
    """
    if state.mode is Mode.NOTE and state.by_voice and state.now_s - state.asked_at_s > SOUND_S:
        return noting.sounded(state)
    waiting = state.mode is Mode.STEP and not state.talking and not state.deaf
    if not (state.timing and waiting and state.pace.known) or state.due_told:
        return state, ()
    row = find.row_at(state.plan, state.place)
    wanted = row_left_s(state.pace, state.plan, state.place)
    if row.kind is not RowKind.WORK or wanted <= 0:
        return state, ()
    if state.now_s - state.step_since_s < wanted:
        return state, ()
    return say(replace(state, due_told=True), Saying("row due", state.place), soft=True)
