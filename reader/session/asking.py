"""Questions: which row, which part, how many have you; what costs something asks yes or no."""

from __future__ import annotations

from dataclasses import replace

from reader.commands.command import Ask, Command
from reader.commands.numbers import sounds_like
from reader.plan import find
from reader.session import (
    between,
    checking,
    explaining,
    gauging,
    marking,
    moving,
    noting,
    searching,
)
from reader.session.effects import Saying
from reader.session.speaking import Out, say
from reader.session.state import Mode, State


def which_row(state: State, command: Command) -> Out:
    """Asks for the row's number, or goes there when it came along."""
    if command.number is not None:
        return _go(state, command.number)
    numbers = find.row_numbers(state.plan, state.place.part)
    if not numbers:
        return say(state, Saying("no numbers"))
    return say(replace(state, mode=Mode.ROW_NUMBER), Saying("which row", state.place))


def _go(state: State, number: int) -> Out:
    to = find.find_row(state.plan, state.place.part, number)
    if to is None:
        return say(state, Saying("no such row", state.place, number))
    alike = sounds_like(number)
    if alike is not None and find.find_row(state.plan, state.place.part, alike) is not None:
        return _said_back(state, Command(Ask.GO_TO_ROW, number))
    return moving.moved(state, to, Ask.GO_TO_ROW)


def which_part(state: State, command: Command) -> Out:
    """Asks for the part's name."""
    if len(state.plan.parts) < 2:
        return say(state, Saying("one part"))
    return say(
        replace(state, mode=Mode.PART_NAME),
        Saying("which part", more=find.part_phrases(state.plan)),
    )


def rip_to(state: State, command: Command) -> Out:
    """Asks how far to rip back."""
    if command.number is not None:
        return _rip(state, command.number)
    return say(replace(state, mode=Mode.RIP_NUMBER), Saying("rip to which", state.place))


def _rip(state: State, number: int) -> Out:
    to = find.find_row(state.plan, state.place.part, number)
    if to is None:
        return say(state, Saying("no such row", state.place, number))
    if to > state.place:
        return say(state, Saying("row ahead", to, number))
    pending = Command(Ask.RIP_BACK, number)
    return say(
        replace(state, mode=Mode.CONFIRM, pending=pending), Saying("confirm rip", to, number)
    )


def _said_back(state: State, pending: Command) -> Out:
    """Asks whether this number was meant."""
    state, number = replace(state, mode=Mode.CONFIRM, pending=pending), pending.number or 0
    if pending.ask is Ask.I_HAVE:
        return say(state, Saying("confirm count", state.place, number))
    to = find.find_row(state.plan, state.place.part, number)
    return say(state, Saying("confirm row", to, number))


def number_given(state: State, command: Command) -> Out:
    """A number, for whichever question is open."""
    number = command.number if command.number is not None else -1
    if state.mode is Mode.ROW_NUMBER:
        return _go(state, number)
    if state.mode is Mode.RIP_NUMBER:
        return _rip(state, number)
    if state.mode is Mode.HAVE_NUMBER:
        return checking.told(state, number)
    if state.mode is Mode.GAUGE_NUMBER:
        return gauging.told(state, number)
    if state.mode is Mode.YARN_NUMBER:
        return gauging.grams_told(state, number)
    if state.mode is Mode.FIND_NUMBER:
        return searching.counted(state, number)
    if state.mode is Mode.NOTE:
        return noting.worded(state, command.word or str(number))
    if state.mode is Mode.PART_NAME:
        return word_given(state, command)
    return say(state, Saying("number unasked", state.place, number))


def word_given(state: State, command: Command) -> Out:
    """A word of the maker's own: the name of a part or a mark, a note; else it is not known."""
    named = {
        Mode.MARK_NAME: marking.named,
        Mode.MARK_GO: marking.chosen,
        Mode.STITCH_NAME: explaining.named,
        Mode.RIP_NUMBER: marking.rip_asked,
    }
    if state.mode in named and command.word:
        return named[state.mode](state, command)
    if state.mode is Mode.NOTE and command.word:
        return noting.worded(state, command.word)
    if state.mode is Mode.PART_NAME:
        part = _part_of(state, command)
        if part is None:
            return say(state, Saying("which part", more=find.part_phrases(state.plan)))
        to = find.nearest(state.plan, replace(state.place, part=part, row=0, step=0)) or state.place
        return moving.moved(state, to, Ask.GO_TO_PART)
    return say(state, Saying("not known"))


def more_words(state: State, command: Command) -> Out:
    """The other words are listened for next; said again, it goes back to the step."""
    if state.mode is Mode.MORE:
        return say(replace(state, mode=Mode.STEP), Saying("step", state.place))
    return say(replace(state, mode=Mode.MORE), Saying("more words"))


def _part_of(state: State, command: Command) -> int | None:
    """The part that a name names, or a number counts."""
    number = command.number
    if number is not None:
        return number - 1 if 1 <= number <= len(state.plan.parts) else None
    return find.find_part(state.plan, command.word)


def confirm(state: State, command: Command) -> Out:
    """Asks yes or no before something that costs."""
    kind = "confirm finish" if command.ask is Ask.FINISH_TODAY else "confirm start over"
    return say(replace(state, mode=Mode.CONFIRM, pending=command), Saying(kind, state.place))


def yes(state: State, command: Command) -> Out:
    """Does what was asked about."""
    pending = state.pending
    if state.mode is not Mode.CONFIRM or pending is None:
        return say(state, Saying("no question"))
    state = replace(state, mode=Mode.STEP, pending=None)
    if pending.ask is Ask.FINISH_TODAY:
        from reader.session.transitions import finish

        return finish(state)
    if pending.ask is Ask.START_OVER:
        first = find.first_place(state.plan) or state.place
        return moving.moved(state, first, pending.ask)
    number = pending.number or 0
    if pending.ask is Ask.I_HAVE and pending.word:
        return checking.compared(state, number)
    if pending.ask is Ask.I_HAVE:
        return searching.begin(state, number)
    if pending.ask is Ask.RIP_BACK and pending.word:
        return marking.ripped(state, pending.word)
    to = find.find_row(state.plan, state.place.part, number)
    if to is None:
        return say(state, Saying("no such row", state.place, number))
    if pending.ask is Ask.RIP_BACK:
        return moving.moved(state, to, pending.ask, Saying("ripped", to, number))
    return moving.moved(state, to, pending.ask)


def no(state: State, command: Command) -> Out:
    """Leaves everything as it was; right after a move, takes it back."""
    if state.mode is Mode.NOTE:
        return noting.left(state)
    if (other := between.refused(state)) is not None:
        return _said_back(state, other)
    if state.mode in (
        Mode.CONFIRM,
        Mode.ROW_NUMBER,
        Mode.RIP_NUMBER,
        Mode.HAVE_NUMBER,
        Mode.GAUGE_NUMBER,
        Mode.FIND_NUMBER,
        Mode.YARN_NUMBER,
        Mode.MARK_NAME,
        Mode.MARK_GO,
        Mode.STITCH_NAME,
        Mode.PART_NAME,
        Mode.MORE,
        Mode.COUNTING,
    ):
        return say(
            replace(state, mode=Mode.STEP, pending=None),
            Saying("left alone"),
            Saying("step", state.place),
        )
    return moving.undo(state, command)
