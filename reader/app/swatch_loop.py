"""The swatch's loop: events of the devices, the lesson, the transitions and their effects."""

from __future__ import annotations

import queue
from collections.abc import Callable

from reader.app.loop import KeyPressed, Typed
from reader.commands.command import Command
from reader.commands.phrases import ask_of_key
from reader.devices.ports import (
    ChimePlayer,
    DeviceBack,
    DeviceLost,
    ReaderError,
    RoomHeard,
    SampleEar,
    SampleHeard,
    SpeechEnded,
    SpeechStarted,
    Voice,
)
from reader.listening.heard import Heard
from reader.listening.lesson import Lesson
from reader.listening.own_words import OwnWords
from reader.screens.port import ScreenPort
from reader.session import effects as do
from reader.session import swatch as weaving
from reader.session.events import CommandGiven, DeviceWent, NotSure, TalkEnded
from reader.session.understand import NotForUs, Unsure, understand
from reader.wording.swatch_words import shown_swatch, talk_swatch

Better = Callable[[str], str]
"""A word that could be said instead of this phrase, "" for none."""


class SwatchLoop:
    """Performs a swatch; what is None is not there. ear: set before the start. keep: keeps what was
    learned; raises ReaderError with one sentence.
    """

    ear: SampleEar

    def __init__(
        self,
        lesson: Lesson,
        keep: Callable[[OwnWords], None],
        better: Better = lambda phrase: "",
        voice: Voice | None = None,
        chimes: ChimePlayer | None = None,
        screen: ScreenPort | None = None,
    ) -> None:
        self.lesson, self.keep, self.better = lesson, keep, better
        self.voice, self.chimes, self.screen = voice, chimes, screen
        self.events: queue.Queue[object] = queue.Queue()
        self.state = weaving.Swatch(())
        self.answer, self.unkept = "", ""
        self.phrases: tuple[str, ...] = ()
        self.closing = False

    def push(self, event: object) -> None:
        """Takes an event from any thread."""
        self.events.put(event)

    def start(self, words: tuple[str, ...]) -> None:
        """The first words."""
        self.state, effects = weaving.begin_swatch(words)
        self.perform(effects)

    def run(self) -> None:
        """Until the swatch is over."""
        while not self.closing:
            self.one(self.events.get())

    def one(self, event: object) -> None:
        """One event through to its effects."""
        told = self.translated(event)
        if told is not None:
            self.state, effects = weaving.weave(self.state, told)
            self.perform(effects)

    def translated(self, event: object) -> weaving.SwatchEvent | None:
        """What an event of a device means to the swatch."""
        if isinstance(event, RoomHeard):
            return weaving.RoomMeasured(self.lesson.room(event.sound))
        if isinstance(event, SampleHeard):
            return self.judged(event)
        if isinstance(event, Heard):
            return self.heard(event)
        if isinstance(event, KeyPressed):
            return self.key(event.name)
        if isinstance(event, Typed):
            words = " ".join(event.words.lower().split())
            return self.key(words) if len(words) == 1 else weaving.Named(words)
        if isinstance(event, SpeechEnded):
            self.ear.mask("")
            return TalkEnded(event.number, event.complete, 0.0)
        if isinstance(event, SpeechStarted) and self.voice:
            self.voice.soften(True)
        if isinstance(event, DeviceLost):
            return DeviceWent(event.device, event.sentence, 0.0)
        if isinstance(event, DeviceBack):
            return DeviceWent(event.device, f"The {event.device} is back.", 0.0)
        return None

    def judged(self, event: SampleHeard) -> weaving.SampleTaken:
        """A sample, judged; with another word for one that would be missed."""
        word = self.state.word
        judged = self.lesson.take(word, event.sound)
        better = self.better(word) if judged.missed else ""
        return weaving.SampleTaken(
            judged.trouble, judged.taken, judged.missed, judged.like, better
        )

    def heard(self, heard: Heard) -> weaving.SwatchEvent | None:
        """An answer, under the phrases that are expected."""
        if self.voice:
            self.voice.soften(False)
        understood = understand(heard, weaving.swatch_phrases(self.state))
        if isinstance(understood, NotForUs):
            return None
        sure = isinstance(understood, Command)
        if self.screen:
            self.screen.heard_line(heard.text if sure else f"not sure: {heard.text}")
        if isinstance(understood, Unsure):
            return NotSure(understood.words, 0.0)
        return CommandGiven(understood, 0.0)

    def key(self, name: str) -> weaving.SwatchEvent | None:
        """A key; control-C leaves without keeping anything."""
        if name in ("ctrl+c", "ctrl+d"):
            self.close()
            return None
        ask = ask_of_key(name)
        return CommandGiven(Command(ask), 0.0, False) if ask is not None else None

    def perform(self, effects: tuple[weaving.SwatchEffect, ...]) -> None:
        """Does what is asked, in order; a device that is not there is passed over."""
        for effect in effects:
            if isinstance(effect, do.Say):
                self.say(effect)
            elif isinstance(effect, do.Chime) and self.chimes:
                self.chimes.chime(effect.name)
            elif isinstance(effect, do.StopTalking) and self.voice:
                self.voice.stop()
            elif isinstance(effect, do.Close):
                self.closing = True
            else:
                self.learn(effect)
        self.listen()
        if self.screen:
            self.screen.show(shown_swatch(self.state, self.answer))
        if self.closing:
            self.close()

    def learn(self, effect: weaving.SwatchEffect) -> None:
        """What concerns the lesson."""
        if isinstance(effect, weaving.MeasureRoom):
            self.ear.measure(effect.seconds)
        elif isinstance(effect, weaving.TakeSample):
            self.ear.sample(self.lesson.room_db)
        elif isinstance(effect, weaving.BeginWord):
            self.lesson.begin(effect.phrase, effect.name)
        elif isinstance(effect, weaving.LeaveWord):
            self.lesson.leave(effect.phrase)
        elif isinstance(effect, weaving.NameOwn):
            self.lesson.names[effect.phrase] = effect.name
        elif isinstance(effect, weaving.KeepWords) and self.state.learned:
            try:
                self.keep(self.lesson.own_words())
            except ReaderError as trouble:
                self.unkept = str(trouble)

    def listen(self) -> None:
        """The ear hears what can be said now, with what was learned so far."""
        phrases, before = weaving.swatch_phrases(self.state), self.phrases
        self.phrases = phrases
        if phrases == before:
            return
        if phrases:
            self.ear.know(self.lesson.ear())
        self.ear.listen_for(phrases)

    def say(self, effect: do.Say) -> None:
        """Speaks, and shows what is spoken; nothing is taken as a sample meanwhile."""
        self.ear.idle()
        words = self.unkept or talk_swatch(effect.sayings, self.state)
        self.answer = words
        if self.screen:
            self.screen.say_line(words)
        if self.voice and words:
            self.ear.mask(words)
            self.voice.say(words, effect.number)
        else:
            self.push(SpeechEnded(effect.number, True))

    def close(self) -> None:
        """Ends the screen's wait."""
        self.closing = True
        if self.screen:
            self.screen.close()
