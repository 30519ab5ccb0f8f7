"""Counting along: the tally is kept while the maker counts."""

from __future__ import annotations

from dataclasses import replace

from reader.commands.command import Ask, Command
from reader.plan import find
from reader.plan.step import RowKind
from reader.session import moving
from reader.session.effects import Chime, Effect, Save, Saying, Show
from reader.session.speaking import Out, say
from reader.session.state import Mode, State


def begin(state: State, command: Command) -> Out:
    """Counts along in this row: one word a stitch, or the numbers aloud."""
    if find.row_at(state.plan, state.place).kind is not RowKind.WORK:
        return say(state, Saying("nothing counted"))
    step = find.step_at(state.plan, state.place, state.tastes.grain)
    return say(
        replace(state, mode=Mode.COUNTING, tally=step.done, tally_by=1),
        Saying("counting", state.place, step.done),
    )


def counted(state: State, command: Command) -> Out:
    """One more stitch, or the number said; a number left out or said twice is told."""
    total = find.row_at(state.plan, state.place).count
    if command.ask is Ask.UNDO:
        tally = max(0, state.tally - state.tally_by)
        return replace(state, tally=tally), (*_ticked(state), Save(), Show())
    wanted = state.tally + state.tally_by
    if command.ask is Ask.NUMBER and command.number is not None:
        said = command.number
        if said != wanted:
            kind = "said twice" if said == state.tally else "skipped"
            return say(
                replace(state, tally=said),
                Saying(kind, number=said, words=str(wanted)),
                before=(Chime("trouble"), Save()),
            )
        wanted = said
    state = replace(state, tally=wanted)
    if total is not None and wanted >= total:
        return moving.row_done(replace(state, mode=Mode.STEP), command)
    return state, (*_ticked(state), Save(), Show())


def _ticked(state: State) -> tuple[Effect, ...]:
    """The sound that a key was counted; a word has had its own."""
    return () if state.by_voice else (Chime("heard"),)


def by(state: State, command: Command) -> Out:
    """One word for each stitch, for five or for ten."""
    each = {Ask.BY_FIVE: 5, Ask.BY_TEN: 10}.get(command.ask, 1)
    state = replace(state, tally_by=each, mode=Mode.COUNTING)
    return say(state, Saying("counting", state.place, state.tally))
