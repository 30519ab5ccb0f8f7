"""The swatch: two minutes before the work in which the program learns how a maker speaks.

A state machine like the session: (state, event) -> (state, effects). First the room is listened to,
then each word is said three times, then commands may be given words or sounds of the maker's own.
"""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from enum import Enum

from reader.commands.asked import command_of
from reader.commands.command import Ask, Command
from reader.commands.phrases import TABLE, ask_of, phrases_of
from reader.session.effects import Chime, Close, Effect, Say, Saying, Show, StopTalking
from reader.session.events import CommandGiven, DeviceWent, NotSure, TalkEnded
from reader.session.state import MISSES

ROOM_S = 3
"""Seconds of quiet that the room is listened to."""
GIVEN_UP = 2
"""Times that nothing is heard before a word is left out."""
NEEDED = (
    "yes", "no", "next", "again", "go back", "where am i", "how many", "row done", "pause",
    "carry on", "hush", "undo that",
)  # fmt: skip
"""What is learned where nothing else is asked for: what an evening needs most. Yes and no come
first, since the swatch itself asks for them.
"""
TAUGHT = tuple(words.phrases[0] for words in TABLE)
"""Every command by its taught phrase."""


class Stage(Enum):
    """What the swatch waits for."""

    ROOM = "the room"
    WORD = "a word"
    OTHER = "whether another word is wanted for one that is missed"
    RENAME = "whether a command is to be renamed"
    WHICH = "which command is to be renamed"
    DONE = "the end"


@dataclass(frozen=True, slots=True)
class MeasureRoom:
    """Listen to the room for these seconds."""

    seconds: int


@dataclass(frozen=True, slots=True)
class TakeSample:
    """Take the next thing that is said as a sample of this phrase."""

    phrase: str


@dataclass(frozen=True, slots=True)
class BeginWord:
    """Samples of this phrase begin anew, for a word of the maker's own that is written so ("" for a
    sound without a name).
    """

    phrase: str
    name: str = ""


@dataclass(frozen=True, slots=True)
class LeaveWord:
    """Samples taken of this phrase do not count."""

    phrase: str


@dataclass(frozen=True, slots=True)
class NameOwn:
    """The maker's own word for this phrase is written so."""

    phrase: str
    name: str


@dataclass(frozen=True, slots=True)
class KeepWords:
    """Keep what was learned."""


SwatchEffect = (
    Effect | MeasureRoom | TakeSample | BeginWord | LeaveWord | NameOwn | KeepWords
)


@dataclass(frozen=True, slots=True)
class RoomMeasured:
    """The room was listened to; trouble: as in reader.listening.room."""

    trouble: str


@dataclass(frozen=True, slots=True)
class SampleTaken:
    """A sample was judged; the fields are those of reader.listening.lesson.Judged.

    better: a word that could be said instead where this one is missed, "" for none.
    """

    trouble: str
    taken: int
    missed: bool = False
    like: str = ""
    better: str = ""


@dataclass(frozen=True, slots=True)
class Named:
    """Words typed."""

    words: str


SwatchEvent = (
    RoomMeasured | SampleTaken | Named | CommandGiven | NotSure | TalkEnded | DeviceWent
)


@dataclass(frozen=True, slots=True)
class Swatch:
    """An open swatch. words: what is still to be learned, the present one first. learned: what is.
    dead: the room gave no sound at all.
    own: the present word is the maker's own. empty: how often in a row nothing was heard. better:
    what is offered. misses, said, talking, last: as in the session's state.
    """

    words: tuple[str, ...]
    stage: Stage = Stage.ROOM
    learned: tuple[str, ...] = ()
    dead: bool = False
    own: bool = False
    empty: int = 0
    better: str = ""
    misses: int = 0
    said: int = 0
    talking: bool = False
    last: tuple[Saying, ...] = field(default=())

    @property
    def word(self) -> str:
        """The present word, "" when all are through."""
        return self.words[0] if self.words else ""


Out = tuple[Swatch, tuple[SwatchEffect, ...]]


def begin_swatch(words: tuple[str, ...] = NEEDED) -> Out:
    """The swatch with its first words said."""
    return _say(Swatch(words), Saying("swatch begins", number=len(words)))


def swatch_phrases(state: Swatch) -> tuple[str, ...]:
    """What can be said now by word of command; () while samples are taken."""
    if state.stage in (Stage.OTHER, Stage.RENAME):
        return phrases_of((Ask.YES, Ask.NO, Ask.AGAIN))
    if state.stage is Stage.WHICH:
        return TAUGHT
    return ()


def weave(state: Swatch, event: SwatchEvent) -> Out:
    """The next state and what is to be done; Close ends it."""
    if isinstance(event, TalkEnded):
        return _talk_over(state, event)
    if isinstance(event, RoomMeasured):
        return _room(state, event.trouble)
    if isinstance(event, SampleTaken):
        return _sample(state, event)
    if isinstance(event, Named):
        return _named(state, event.words)
    if isinstance(event, NotSure):
        return _unclear(state)
    if isinstance(event, DeviceWent):
        return _say(state, Saying("device lost", words=event.sentence))
    if isinstance(event, CommandGiven):
        chime: tuple[SwatchEffect, ...] = (Chime("heard"),) if event.by_voice else ()
        after, effects = _given(replace(state, misses=0), event.command)
        return after, (*chime, *effects)
    return state, ()


def _talk_over(state: Swatch, event: TalkEnded) -> Out:
    """What was announced begins when the words are over, so that they are not heard as a sample."""
    if event.number != state.said:
        return state, ()
    state = replace(state, talking=False)
    if state.stage is Stage.ROOM:
        return state, (MeasureRoom(ROOM_S),)
    if state.stage is Stage.WORD:
        return state, (Chime("waiting"), TakeSample(state.word))
    if state.stage is Stage.DONE:
        return state, (Close(),)
    return state, ()


def _room(state: Swatch, trouble: str) -> Out:
    if state.stage is not Stage.ROOM:
        return state, ()
    # A microphone may also be silent because it leaves out all that is not speech.
    state = replace(state, dead=trouble == "dead microphone")
    return _word(state, Saying("room", words=trouble))


def _word(state: Swatch, *before: Saying) -> Out:
    """The next word is asked for; where none is left, whether one is to be renamed."""
    if not state.word:
        kind = "rename another" if state.stage is Stage.RENAME else "rename"
        return _say(replace(state, stage=Stage.RENAME), *before, Saying(kind))
    first = "" if state.learned else "first"
    kind = "say own word" if state.own else "say word"
    state = replace(state, stage=Stage.WORD, empty=0)
    return _say(state, *before, Saying(kind, words=state.word, more=(first,)))


def _sample(state: Swatch, sample: SampleTaken) -> Out:
    if state.stage is not Stage.WORD or state.talking:
        return state, ()
    if sample.trouble == "nothing":
        state = replace(state, empty=state.empty + 1)
        if state.empty >= GIVEN_UP and state.dead and not state.learned:
            return _say(replace(state, stage=Stage.DONE), Saying("nothing comes"))
        if state.empty >= GIVEN_UP:
            return _left_out(state)
    if sample.trouble:
        return _say(state, Saying("sample", words=sample.trouble, more=(state.word,)))
    state = replace(state, empty=0)
    if sample.taken < 3:
        return state, (Chime("heard"), TakeSample(state.word), Show())
    if sample.missed and sample.better and not (state.own or state.better):
        state = replace(state, stage=Stage.OTHER, better=sample.better)
        asked = Saying("often missed", words=state.word, more=(sample.better, sample.like))
        return _say(state, asked, before=(Chime("heard"),))
    after, effects = _learned(state)
    return after, (Chime("heard"), *effects)


def _learned(state: Swatch, *before: Saying) -> Out:
    known = Saying("renamed", words=state.word)
    told = (*before, known) if state.own else before
    learned = tuple(dict.fromkeys((*state.learned, state.word)))
    was_own = state.own
    state = replace(state, learned=learned, words=state.words[1:], own=False, better="")
    if was_own and not state.words:
        state = replace(state, stage=Stage.RENAME)
    return _word(state, *told)


def _left_out(state: Swatch) -> Out:
    word, own = state.word, state.own
    state = replace(state, words=state.words[1:], own=False, empty=0)
    if own and not state.words:
        state = replace(state, stage=Stage.RENAME)
    after, effects = _word(state, Saying("left out", words=word))
    return after, (LeaveWord(word), *effects)


def _given(state: Swatch, command: Command) -> Out:
    if command.ask is Ask.FINISH_TODAY:
        return _end(state)
    if command.ask is Ask.HUSH:
        return state, (StopTalking(), Show())
    if state.stage is Stage.OTHER and command.ask in (Ask.YES, Ask.NO):
        return _other(state, command.ask is Ask.YES)
    if state.stage is Stage.RENAME and command.ask in (Ask.YES, Ask.NO):
        if command.ask is Ask.NO:
            return _end(state)
        return _say(replace(state, stage=Stage.WHICH), Saying("rename which"))
    if state.stage is Stage.WHICH:
        return _which(state, command)
    if state.stage is Stage.WORD and command.ask is Ask.NEXT:
        return _left_out(state)
    if command.ask is Ask.AGAIN and state.last:
        return _say(state, *state.last)
    return state, (Chime("not sure"), Show())


def _other(state: Swatch, wanted: bool) -> Out:
    if not wanted:
        return _learned(state)
    begin = BeginWord(state.word, state.better)
    state = replace(state, stage=Stage.WORD)
    after, effects = _say(state, Saying("say other word", words=state.better, more=(state.word,)))
    return after, (begin, *effects)


def _which(state: Swatch, command: Command) -> Out:
    if command.ask is Ask.NO:
        return _end(state)
    if command.ask in (Ask.WORD, Ask.NUMBER) or not command.word:
        return _say(state, Saying("rename which not"))
    phrase = phrases_of((command.ask,))[0]
    state = replace(state, words=(phrase,), own=True)
    after, effects = _word(state)
    return after, (BeginWord(phrase), *effects)


def _named(state: Swatch, words: str) -> Out:
    """Typed words: the name of the maker's own word, else a command."""
    if state.stage is Stage.WORD and state.own:
        after, effects = _say(state, Saying("named", words=words, more=(state.word,)))
        return after, (NameOwn(state.word, words), *effects)
    command = command_of(words)
    by_name = ask_of(words) is not None
    return _given(state, command if by_name else Command(Ask.WORD, word=words))


def _unclear(state: Swatch) -> Out:
    state = replace(state, misses=state.misses + 1)
    if state.misses == MISSES:
        return _say(state, Saying("missed an answer"), before=(Chime("not sure"),))
    return state, (Chime("not sure"), Show())


def _end(state: Swatch) -> Out:
    state = replace(state, stage=Stage.DONE)
    after, effects = _say(state, Saying("swatch done", number=len(state.learned)))
    return after, (KeepWords(), *effects)


def _say(state: Swatch, *sayings: Saying, before: tuple[SwatchEffect, ...] = ()) -> Out:
    stop: tuple[SwatchEffect, ...] = (StopTalking(),) if state.talking else ()
    state = replace(state, said=state.said + 1, talking=True, last=sayings)
    return state, (*stop, *before, Show(), Say(state.said, sayings))
