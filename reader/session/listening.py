"""The phrases that make sense in a state: the recogniser's grammar."""

from __future__ import annotations

from reader.commands.command import Ask
from reader.commands.numbers import say_number
from reader.commands.phrases import MAIN, MORE, phrases_of
from reader.plan import find
from reader.session.state import Mode, State

MOST_NUMBERS = 220
"""Numbers in one grammar at most."""
ESCAPES = (Ask.NO, Ask.AGAIN, Ask.HUSH)
NEAR = 12
"""Stitches to each side of the expected count that can be said."""


def phrases_for(state: State) -> tuple[str, ...]:
    """What can be said now; () when the program does not listen.

    With an attention word it stands before each phrase, except where a question is open.
    """
    word = state.tastes.attention
    phrases = _phrases(state)
    if not word or state.mode not in (Mode.STEP, Mode.PAUSED):
        return phrases
    return tuple(f"{word} {phrase}" for phrase in phrases)


def _phrases(state: State) -> tuple[str, ...]:
    mode = state.mode
    if state.deaf or mode is Mode.FINISHED:
        return ()
    if mode is Mode.PAUSED:
        return phrases_of((Ask.CARRY_ON, Ask.WHERE, Ask.FINISH_TODAY))
    if mode is Mode.CONFIRM:
        return phrases_of((Ask.YES, Ask.NO, Ask.AGAIN, Ask.HUSH))
    if mode is Mode.MORE:
        return phrases_of((*MORE, Ask.NO, Ask.HUSH))
    if mode in (Mode.ROW_NUMBER, Mode.RIP_NUMBER):
        numbers = find.row_numbers(state.plan, state.place.part)
        said = tuple(say_number(n) for n in numbers[:MOST_NUMBERS] if n < 1000)
        return (*said, *phrases_of(ESCAPES))
    if mode is Mode.HAVE_NUMBER:
        total = find.row_at(state.plan, state.place).count or 40
        near = range(max(0, total - NEAR), min(total + NEAR, 999) + 1)
        return (*(say_number(n) for n in near), *phrases_of(ESCAPES))
    if mode is Mode.PART_NAME:
        return (*find.part_phrases(state.plan), *phrases_of(ESCAPES))
    if mode is Mode.COUNTING:
        near = range(max(0, state.tally - 1), state.tally + 4)
        more = phrases_of((Ask.NEXT, Ask.UNDO, Ask.NO, Ask.HOW_MANY, Ask.HUSH))
        return (*(say_number(n) for n in near if n < 1000), *more)
    return phrases_of(MAIN)
