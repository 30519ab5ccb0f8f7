"""Answers: where am I, how many, what's after this, the whole row; nothing moves."""

from __future__ import annotations

from dataclasses import replace

from reader.commands.command import Ask, Command
from reader.plan import find
from reader.session.effects import Saying
from reader.session.speaking import Out, say
from reader.session.state import Mode, State

QUESTIONS = (
    Mode.CONFIRM,
    Mode.ROW_NUMBER,
    Mode.HAVE_NUMBER,
    Mode.RIP_NUMBER,
    Mode.GAUGE_NUMBER,
    Mode.FIND_NUMBER,
    Mode.YARN_NUMBER,
    Mode.MARK_NAME,
    Mode.MARK_GO,
    Mode.STITCH_NAME,
    Mode.NOTE,
    Mode.GATHER,
    Mode.PART_NAME,
)
"""What is waited for after a question; "again" then repeats the question."""
DEEPER_S = 12.0
"""Asked again within this time, "where am I" tells more."""


def again(state: State, command: Command) -> Out:
    """The step once more."""
    if state.mode in QUESTIONS and state.last:
        return say(state, *state.last)
    return say(state, Saying("step again", state.place))


def where(state: State, command: Command) -> Out:
    """The place; asked again soon, with the counts; a third time, with the whole piece."""
    soon = state.now_s - state.where_at_s < DEEPER_S
    depth = min(3, state.where_depth + 1) if soon else 1
    state = replace(state, where_depth=depth, where_at_s=state.now_s)
    still = (Saying("still paused"),) if state.mode is Mode.PAUSED else ()
    return say(state, *still, Saying("where", state.place, depth))


def how_many(state: State, command: Command) -> Out:
    """Done, left and total of the row, and the passes."""
    if state.mode is Mode.COUNTING:
        return say(state, Saying("tally", state.place, state.tally))
    return say(state, Saying("how many", state.place))


def after_this(state: State, command: Command) -> Out:
    """What comes after this step."""
    to = find.next_place(state.plan, state.place, state.tastes.grain)
    if to is None:
        return say(state, Saying("last step"))
    return say(state, Saying("after", to))


def whole_row(state: State, command: Command) -> Out:
    """The row from its first word to its count."""
    return say(state, Saying("row", state.place))


def as_written(state: State, command: Command) -> Out:
    """The pattern's own words."""
    return say(state, Saying("written", state.place))


def spelled(state: State, command: Command) -> Out:
    """Letter by letter."""
    return say(state, Saying("spelled", state.place))


def last_done(state: State, command: Command) -> Out:
    """The step or row that was said to be done last."""
    return say(state, last_deed(state))


def last_deed(state: State) -> Saying:
    """The saying for what was done last; what was ripped back or started over is undone."""
    for one in reversed(state.journal):
        if one.ask in (Ask.START_OVER, Ask.RIP_BACK):
            break
        if one.ask in (Ask.NEXT, Ask.ROW_DONE):
            return Saying("last done", one.before, words=one.ask.value)
    return Saying("last done")


def pattern_notes(state: State, command: Command) -> Out:
    """What the pattern says about itself before its rows."""
    if not state.plan.notes:
        return say(state, Saying("no pattern note"))
    return say(state, *(Saying("pattern note", words=one) for one in state.plan.notes))


def how_long(state: State, command: Command) -> Out:
    """Time left by the maker's own pace."""
    return say(state, Saying("how long", state.place))


def what_can_i_say(state: State, command: Command) -> Out:
    """The words that make sense now."""
    from reader.session.listening import phrases_for

    return say(state, Saying("can say", more=phrases_for(state)))
