"""View: what of a state a screen needs beside the step: what is waited for and can be done."""

from __future__ import annotations

from dataclasses import dataclass

from reader.commands.command import Ask
from reader.commands.phrases import BY_ASK
from reader.session.state import Mode, State


@dataclass(frozen=True, slots=True)
class View:
    """The state for a screen. ready: (key, what it does), most wanted first."""

    title: str
    mode: Mode
    heard: str
    ready: tuple[tuple[str, str], ...]


NUMBERS = (
    Mode.ROW_NUMBER,
    Mode.RIP_NUMBER,
    Mode.HAVE_NUMBER,
    Mode.FIND_NUMBER,
    Mode.GAUGE_NUMBER,
    Mode.YARN_NUMBER,
    Mode.PART_NAME,
)
"""What a number answers."""
WORDED = (Mode.MARK_NAME, Mode.MARK_GO, Mode.STITCH_NAME, Mode.NOTE)
"""What words answer."""
FIRST = (Ask.NEXT, Ask.AGAIN, Ask.BACK, Ask.WHERE, Ask.HOW_MANY, Ask.WHAT_CAN_I_SAY)


def view_of(state: State) -> View:
    """The view of a state."""
    asks: tuple[Ask, ...] = FIRST
    if state.mode is Mode.CONFIRM:
        asks = (Ask.YES, Ask.NO)
    elif state.mode in (*NUMBERS, *WORDED):
        asks = (Ask.NO, Ask.AGAIN)
    elif state.mode is Mode.GATHER:
        asks = (Ask.YES, Ask.NO, Ask.EXPLAIN, Ask.CARRY_ON)
    elif state.mode is Mode.COUNTING:
        asks = (Ask.NEXT, Ask.UNDO, Ask.HOW_MANY, Ask.NO)
    elif state.deaf or state.mode is Mode.PAUSED:
        asks = (Ask.CARRY_ON,)
    ready = tuple((BY_ASK[ask].key, BY_ASK[ask].does) for ask in asks)
    if state.mode in NUMBERS:
        ready = (("enter", "after the number, gives it"), *ready)
    elif state.mode in WORDED:
        ready = ((":", "to type words"), *ready)
    return View(state.plan.title, state.mode, state.heard, (*ready, ("f1", "help")))
