"""Moves: on, back, to a row, to a mark, and what is said when a row ends or begins."""

from __future__ import annotations

from dataclasses import replace

from reader.commands.command import Ask, Command
from reader.plan import find
from reader.plan.pace import learn
from reader.plan.place import Place
from reader.plan.step import Grain, RowKind, Step
from reader.session import cautioning, noting
from reader.session.effects import Chime, Effect, Save, Saying
from reader.session.speaking import Out, say
from reader.session.state import JOURNAL, UNDO_S, Mode, Moved, State

LONG_REPEAT = 13
"""Passes from which the hint comes that a row may be worked without a word. Our own choice."""


def moved(state: State, to: Place, ask: Ask, *first: Saying) -> Out:
    """A move to a place: booked, saved, then the step there is read."""
    here = state.place
    state = noting.without_empty(state)
    journal = (*state.journal, Moved(state.now_s, here, to, ask))[-JOURNAL:]
    state = replace(
        state,
        place=to,
        journal=journal,
        mode=Mode.STEP,
        pending=None,
        step_since_s=state.now_s,
        finished=False,
        due_told=False,
    )
    state, cautions = cautioning.cautioned(state, to)
    told = arrival(state, here, to)
    state, hint = _long_repeat(state, to)
    new_row = find.row_start(here) != find.row_start(to)
    sounds = noting.sounds_here(state, to) if new_row else ()
    return say(state, *first, *cautions, *told, *hint, before=(Save(),), after=sounds)


def _long_repeat(state: State, to: Place) -> tuple[State, tuple[Saying, ...]]:
    """Once a session, where a long repeat begins: that not every pass needs a word."""
    passes = find.step_at(state.plan, to, state.tastes.grain).passes
    many = passes[-1].of or 0 if passes and passes[-1].number == 1 else 0
    if state.hinted or many < LONG_REPEAT:
        return state, ()
    return replace(state, hinted=True), (Saying("long repeat", to),)


def arrival(state: State, before: Place, to: Place) -> tuple[Saying, ...]:
    """What is said on coming to a place: a new part, a new row with its notices, the step."""
    sayings: list[Saying] = []
    if to.part != before.part:
        sayings.append(Saying("part", to))
    if (to.part, to.row) != (before.part, before.row):
        sayings += row_told(state, to)
    return (*sayings, Saying("step", to))


def row_told(state: State, to: Place) -> tuple[Saying, ...]:
    """What is said before a row is worked: notices, what may be wrong in it, the maker's notes."""
    row = find.row_at(state.plan, to)
    notices = tuple(Saying("notice", to, words=notice.text) for notice in row.notices)
    warning = (Saying("warning", to, words=row.warning),) if row.warning else ()
    return (*notices, *warning, *noting.here(state, to))


def next_step(state: State, command: Command) -> Out:
    """On to the next step; a finished row is announced with its count."""
    grain = state.tastes.grain
    step = find.step_at(state.plan, state.place, grain)
    row = find.row_at(state.plan, state.place)
    state = learned(state, step)
    to = find.next_place(state.plan, state.place, grain)
    if to is None:
        return all_done(state)
    if (to.part, to.row) == (state.place.part, state.place.row) or row.kind is not RowKind.WORK:
        return moved(state, to, command.ask)
    return row_ended(state, to, command.ask)


def learned(state: State, step: Step) -> State:
    """The state with the maker's pace after a step that was just done."""
    if state.mode is not Mode.STEP:
        return state
    pace = learn(state.pace, step, state.now_s - state.step_since_s)
    return replace(state, pace=pace)


def all_done(state: State) -> Out:
    """The last step is done: the piece is finished, and kept as finished."""
    if state.finished:
        return say(replace(state, mode=Mode.STEP), Saying("all done", words="again"))
    done = replace(state, mode=Mode.STEP, finished=True)
    return say(done, Saying("all done", state.place), before=(Save(), Chime("round complete")))


def row_ended(state: State, to: Place, ask: Ask) -> Out:
    """The row is complete: chime, the count there should be, now and then a rest, the next row."""
    ended = Saying("row complete", state.place)
    rest: tuple[Saying, ...] = ()
    minutes = state.tastes.rest_minutes
    if minutes and state.now_s - state.sat_since_s >= 60 * minutes:
        rest = (Saying("rest", number=minutes),)
        state = replace(state, sat_since_s=state.now_s)
    state = replace(state, rounds_announced=state.rounds_announced + 1)
    state, effects = moved(state, to, ask, ended, *rest)
    return state, _with_chime(effects, "round complete")


def _with_chime(effects: tuple[Effect, ...], name: str) -> tuple[Effect, ...]:
    return (Chime(name), *effects)


def back(state: State, command: Command) -> Out:
    """One step back."""
    to = find.previous_place(state.plan, state.place, state.tastes.grain)
    if to is None:
        return say(state, Saying("at start"), Saying("step", state.place))
    return moved(state, to, command.ask)


def row_done(state: State, command: Command) -> Out:
    """The whole row is done: on to the next one."""
    to = find.next_row(state.plan, state.place)
    if to is None:
        return all_done(state)
    if find.row_at(state.plan, state.place).kind is not RowKind.WORK:
        return moved(state, to, command.ask)
    state = learned(state, find.step_at(state.plan, state.place, Grain.ROW))
    return row_ended(state, to, command.ask)


def row_start(state: State, command: Command) -> Out:
    """Back to the first step of the row."""
    return moved(state, find.row_start(state.place), command.ask)


def undo(state: State, command: Command) -> Out:
    """The last move taken back, within ten seconds of it."""
    if not state.journal or state.now_s - state.journal[-1].at_s > UNDO_S:
        return say(state, Saying("nothing to undo"))
    last = state.journal[-1]
    state = replace(
        state, journal=state.journal[:-1], place=last.before, mode=Mode.STEP, pending=None
    )
    return say(state, Saying("undone"), Saying("step", last.before), before=(Save(),))
