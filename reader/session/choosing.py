"""Before the work: which pattern is to be worked, and which size; a state machine like the session.

The maker names a choice, hears it back and says yes. Nothing of a pattern is read before its size
is chosen, so that only that size's numbers are ever said.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, field, replace

from reader.commands.command import Ask, Command
from reader.commands.numbers import say_number
from reader.commands.phrases import phrases_of
from reader.session.effects import (
    Chime,
    Chosen,
    Close,
    Effect,
    Say,
    Saying,
    SetVoice,
    Show,
    StopTalking,
)
from reader.session.events import CommandGiven, DeviceWent, Event, NotSure, TalkEnded
from reader.session.state import MISSES, Tastes
from reader.terms.numbers import ORDINALS

Done = tuple["Choosing", tuple[Effect, ...]]

ALWAYS = (Ask.AGAIN, Ask.WHAT_CAN_I_SAY, Ask.HUSH, Ask.FINISH_TODAY)
LETTERS = {
    "xs": "extra small",
    "s": "small",
    "m": "medium",
    "l": "large",
    "xl": "extra large",
    "xxl": "extra extra large",
}
"""What the letters of sizes stand for, as they are said. Common practice, no source."""
MOST_NUMBERED = 30
"""Choices that can be named by their number."""


@dataclass(frozen=True, slots=True)
class Choosing:
    """An open choice. kind: "size" or "project". names: as they are said. at: what was named and
    waits for yes or no, None while nothing is. said, talking, misses: as in the session's state.
    strays: answers in a row that named nothing.
    """

    kind: str
    title: str
    names: tuple[str, ...]
    tastes: Tastes = field(default_factory=Tastes)
    at: int | None = None
    said: int = 0
    talking: bool = False
    misses: int = 0
    strays: int = 0
    heard: str = ""
    last: tuple[Saying, ...] = ()


def begin_choosing(kind: str, title: str, names: tuple[str, ...], tastes: Tastes) -> Done:
    """The choice with its question asked. names: two or more."""
    state = Choosing(kind, title, names, tastes)
    return _say(
        state, Saying(f"which {kind}", more=names), before=(SetVoice(tastes.rate, tastes.volume),)
    )


def choices_said(state: Choosing) -> tuple[str, ...]:
    """What can be said now: yes or no, else each choice by its name and by its number."""
    if state.at is not None:
        return phrases_of((Ask.YES, Ask.NO, Ask.AGAIN, Ask.HUSH))
    named = [phrase for name in state.names if (phrase := plain_name(name))]
    ordinals = {number: word for word, number in ORDINALS.items()}
    numbered = range(1, min(len(state.names), MOST_NUMBERED) + 1)
    counted = [say_number(n) for n in numbered]
    ranked = [f"the {ordinals[n]}" for n in numbered if n in ordinals]
    return tuple(dict.fromkeys((*named, *counted, *ranked, *phrases_of(ALWAYS))))


def plain_name(name: str) -> str:
    """A name as it can be heard: small letters and number words; "" where it holds neither.

    The letters of a size are said as what they stand for: "S" is small.
    """
    name = LETTERS.get(name.strip().lower(), name)
    words = re.findall(r"[a-z]+|\d+", name.lower())
    return " ".join(say_number(int(w)) if w.isdigit() and len(w) < 4 else w for w in words)


def choose(state: Choosing, event: Event) -> Done:
    """The next state and what is to be done. Chosen(index) ends it, Close leaves without one."""
    if isinstance(event, TalkEnded):
        return replace(state, talking=state.talking and event.number != state.said), ()
    if isinstance(event, DeviceWent):
        return _say(state, Saying("device lost", words=event.sentence))
    if isinstance(event, NotSure):
        return _unclear(state)
    if isinstance(event, CommandGiven):
        chime: tuple[Effect, ...] = (Chime("heard"),) if event.by_voice else ()
        state = replace(state, misses=0, heard=event.command.word)
        after, effects = _given(state, event.command)
        return after, (*chime, *effects)
    return state, ()


def _given(state: Choosing, command: Command) -> Done:
    if command.ask is Ask.FINISH_TODAY:
        return state, (Close(),)
    if command.ask is Ask.HUSH:
        return replace(state, talking=False), (StopTalking(), Show())
    if command.ask is Ask.AGAIN:
        return _say(state, *state.last)
    if command.ask is Ask.WHAT_CAN_I_SAY:
        return _say(state, *_told_how(state))
    if state.at is not None and command.ask is Ask.YES:
        return state, (StopTalking(), Chosen(state.at))
    if state.at is not None and command.ask is Ask.NO:
        return _say(replace(state, at=None), Saying(f"which {state.kind}", more=state.names))
    at = _named(state, command)
    if at is None:
        return _not_one(replace(state, strays=state.strays + 1))
    state = replace(state, at=at, strays=0)
    return _say(state, Saying(f"confirm {state.kind}", words=state.names[at]))


def _told_how(state: Choosing) -> tuple[Saying, ...]:
    """Yes or no where that is asked, else each choice with the number that chooses it."""
    if state.at is not None:
        return (Saying(f"confirm {state.kind}", words=state.names[state.at]),)
    return (Saying("choose by number", more=state.names),)


def _not_one(state: Choosing) -> Done:
    """What was said names nothing here: told, the second time otherwise, then only a sound."""
    if state.at is not None or state.strays == 2:
        return _say(state, *_told_how(state))
    if state.strays == 1:
        return _say(state, Saying(f"no such {state.kind}", more=state.names))
    if state.strays == MISSES:
        return _say(state, Saying("missed a choice"), before=(Chime("not sure"),))
    return state, (Chime("not sure"), Show())


def _named(state: Choosing, command: Command) -> int | None:
    names = [plain_name(name) for name in state.names]
    if command.word in names:
        return names.index(command.word)
    number = command.number
    if number is None:
        number = ORDINALS.get(command.word.removeprefix("the "))
    return number - 1 if number is not None and 1 <= number <= len(names) else None


def _unclear(state: Choosing) -> Done:
    state = replace(state, misses=state.misses + 1)
    if state.misses == MISSES:
        return _say(state, Saying("missed a choice"), before=(Chime("not sure"),))
    return state, (Chime("not sure"), Show())


def _say(state: Choosing, *sayings: Saying, before: tuple[Effect, ...] = ()) -> Done:
    stop: tuple[Effect, ...] = (StopTalking(),) if state.talking else ()
    state = replace(state, said=state.said + 1, talking=True, last=sayings)
    return state, (*stop, *before, Show(), Say(state.said, sayings))
