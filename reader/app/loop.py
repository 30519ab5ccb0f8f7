"""Loop: the only place where events, transitions and effects meet; one thread, one queue."""

from __future__ import annotations

import queue
from collections.abc import Callable, Mapping
from dataclasses import replace

from reader.app.note_sounds import NoteSounds
from reader.commands.asked import command_of
from reader.commands.command import Ask, Command
from reader.commands.phrases import ask_of_key
from reader.devices.ports import (
    ChimePlayer,
    Clock,
    DeviceBack,
    DeviceLost,
    Ear,
    ReaderError,
    Shelf,
    SpeechEnded,
    SpeechStarted,
    Voice,
)
from reader.listening.heard import Heard
from reader.plan import find
from reader.screens.port import ScreenPort
from reader.session import effects as do
from reader.session import events as happened
from reader.session.breaths import breaths_for
from reader.session.choosing import Choosing, choices_said, choose
from reader.session.listening import phrases_for
from reader.session.progress import to_plain
from reader.session.state import Mode, State, Tastes
from reader.session.transitions import respond
from reader.session.understand import NotForUs, Unsure, understand
from reader.session.view import view_of
from reader.wording.choices import shown_choice, talk_choice
from reader.wording.figures import in_figures
from reader.wording.show_step import shown_step
from reader.wording.shown import Ear as EarShown
from reader.wording.talk import talk

NUMBERED = (
    Mode.ROW_NUMBER,
    Mode.RIP_NUMBER,
    Mode.HAVE_NUMBER,
    Mode.GAUGE_NUMBER,
    Mode.FIND_NUMBER,
    Mode.YARN_NUMBER,
    Mode.PART_NAME,
    Mode.COUNTING,
)
"""Where digits make a number."""

TICK_S = 2.0
"""How often time alone is looked at while nothing happens."""

EAR_PARTS = frozenset(("microphone", "recogniser"))
"""Devices without which nothing is heard."""

EARS = {Mode.PAUSED: EarShown.PAUSED, Mode.FINISHED: EarShown.FINISHED}


class KeyPressed:
    """A key, by its name."""

    def __init__(self, name: str) -> None:
        self.name = name


class Tick:
    """Time went by."""


class Typed:
    """Words typed instead of spoken."""

    def __init__(self, words: str) -> None:
        self.words = words


class Loop:
    """Performs a session: takes events from the queue, responds, does what is asked in order."""

    def __init__(
        self,
        voice: Voice | None,
        chimes: ChimePlayer | None,
        ear: Ear | None,
        screen: ScreenPort | None,
        shelf: Shelf | None,
        clock: Clock,
        log: Callable[[str], None] = lambda line: None,
        keys: Mapping[str, str] | None = None,
        keep_tastes: Callable[[Tastes], None] = lambda tastes: None,
        barge_in: bool = True,
    ) -> None:
        self.voice, self.chimes, self.ear = voice, chimes, ear
        self.screen, self.shelf, self.clock, self.log = screen, shelf, clock, log
        self.events: queue.Queue[object] = queue.Queue()
        self.state: State | None = None
        self.choosing: Choosing | None = None
        self.chosen: Callable[[int], None] = lambda index: None
        self.kept_too: dict[str, object] = {}
        self.notes = NoteSounds()
        self.keys, self.keep_tastes = dict(keys or {}), keep_tastes
        self.barge_in = barge_in
        self.digits = ""
        self.answer = ""
        self.unsaved = ""
        self.closing = False

    def push(self, event: object) -> None:
        """Takes an event from any thread."""
        self.events.put(event)

    def start(self, state: State, effects: tuple[do.Effect, ...]) -> None:
        """The first state and its effects."""
        self.state, self.choosing = state, None
        self.perform(effects)

    def choose(
        self, choosing: Choosing, effects: tuple[do.Effect, ...], chosen: Callable[[int], None]
    ) -> None:
        """A choice before the work; `chosen` gets the index and starts what was chosen."""
        self.choosing, self.chosen = choosing, chosen
        self.perform(effects)

    def run(self) -> None:
        """Until the session has closed."""
        while not self.closing:
            try:
                event = self.events.get(timeout=TICK_S)
            except queue.Empty:
                event = Tick()
            self.one(event)

    def one(self, event: object) -> None:
        """One event through to its effects."""
        now = self.clock.now_s()
        for told in self.translated(event, now):
            if isinstance(told, happened.CommandGiven):
                self.notes.silence()
            if self.choosing:
                self.choosing, effects = choose(self.choosing, told)
            elif self.state:
                self.state, effects = respond(self.state, told)
            else:
                return
            # Time alone, where it brings nothing about, leaves ear and screen in peace.
            if effects or not isinstance(event, Tick):
                self.perform(effects)

    @property
    def attention(self) -> str:
        """The word that stands before commands, "" where none is wanted now."""
        return self.state.tastes.attention if self.state and not self.choosing else ""

    def phrases(self) -> tuple[str, ...]:
        """What can be said now."""
        if self.choosing:
            return choices_said(self.choosing)
        if self.state is None:
            return ()
        return (*phrases_for(self.state), *breaths_for(self.state))

    def number_wanted(self) -> bool:
        """Whether digits make a number now."""
        if self.choosing:
            return self.choosing.at is None
        return self.state is not None and self.state.mode in NUMBERED

    def translated(self, event: object, now: float) -> list[happened.Event]:
        """What an event of a device means to the session."""
        if isinstance(event, Heard):
            return self.heard(event, now)
        if isinstance(event, KeyPressed):
            return self.key(event.name, now)
        if isinstance(event, Typed):
            words = " ".join(event.words.lower().split())
            if len(words) == 1 and not words.isdigit() and not self.number_wanted():
                return self.key(words, now)
            plain = words.removeprefix(f"{self.attention} ") if self.attention else words
            meant = self.state.tastes.meant(plain) if self.state else plain
            return [happened.CommandGiven(command_of(meant), now, False)]
        if isinstance(event, SpeechEnded):
            if self.ear:
                self.ear.mask("")
            if event.complete:
                self.told(self.notes.play_waiting(self.fingerprint))
            return [happened.TalkEnded(event.number, event.complete, now)]
        if isinstance(event, SpeechStarted):
            if self.voice:
                self.voice.soften(True)
            return []
        if isinstance(event, Tick):
            self.told(self.notes.keep_due(self.fingerprint, now))
            return [happened.Ticked(now)]
        if isinstance(event, DeviceLost):
            return [happened.DeviceWent(event.device, event.sentence, now)]
        if isinstance(event, DeviceBack):
            return [happened.DeviceCame(event.device, now)]
        return []

    def heard(self, heard: Heard, now: float) -> list[happened.Event]:
        """An utterance, under the phrases that are expected."""
        if self.voice:
            self.voice.soften(False)
        understood = understand(heard, self.phrases(), self.attention)
        self.log(f"heard: {heard.text!r} certain={heard.certain} {heard.doubt}")
        if isinstance(understood, NotForUs):
            return []
        if self.screen:
            sure = isinstance(understood, Command)
            self.screen.heard_line(heard.text if sure else f"not sure: {heard.text}")
        if isinstance(understood, Unsure):
            return [happened.NotSure(understood.words, now, understood.other)]
        return [happened.CommandGiven(understood, now)]

    def key(self, name: str, now: float) -> list[happened.Event]:
        """A key; digits make a number while one is asked for, enter or space gives it."""
        if name in ("ctrl+c", "ctrl+d"):
            self.save()
            self.close()
            return []
        if self.number_wanted() and name.isdigit():
            self.digits = (self.digits + name)[:3]
            if self.screen:
                self.screen.heard_line(self.digits)
            return []
        digits, self.digits = self.digits, ""
        if digits and self.screen:
            self.screen.heard_line("")  # The figures stood there while they were typed.
        if digits and name in ("enter", "space"):
            command = Command(Ask.NUMBER, int(digits), digits)
            return [happened.CommandGiven(command, now, False)]
        ask = ask_of_key(name, self.keys)
        if ask is None:
            return [happened.KeyUnknown(name, now)] if name.isprintable() else []
        return [happened.CommandGiven(Command(ask), now, False)]

    def perform(self, effects: tuple[do.Effect, ...]) -> None:
        """Does what is asked, in order; a device that is not there is passed over."""
        for effect in effects:
            if isinstance(effect, do.Save):
                self.save()
            elif isinstance(effect, do.Say):
                self.say(effect)
            elif isinstance(effect, do.Chime) and self.chimes:
                self.chimes.chime(effect.name)
            elif isinstance(effect, do.StopTalking) and self.voice:
                self.voice.stop()
            elif isinstance(effect, do.SetVoice) and self.voice:
                self.voice.set_rate(effect.rate)
                self.voice.set_volume(effect.volume)
            elif isinstance(effect, do.KeepTastes):
                self.keep()
            elif isinstance(effect, do.KeepSound):
                self.notes.keep_later(effect, self.clock.now_s())
            elif isinstance(effect, do.PlaySound):
                self.notes.to_play.append(effect.name)
            elif isinstance(effect, do.Chosen):
                return self.open(effect.index)
            elif isinstance(effect, do.Close):
                self.closing = True
        if self.ear:
            waits = not self.barge_in and bool(self.voice and self.voice.speaking())
            self.ear.listen_for(() if waits else self.phrases())
        self.show()
        if self.closing:
            self.close()
        return None

    def open(self, index: int) -> None:
        """What was chosen is started; what cannot be is told, and the choice stays open."""
        try:
            self.chosen(index)
        except ReaderError as trouble:
            self.push(DeviceLost("pattern", str(trouble)))

    def say(self, effect: do.Say) -> None:
        """Speaks, and shows what is spoken."""
        words = ""
        if self.choosing:
            words = talk_choice(effect.sayings, self.choosing)
        elif self.state:
            words = talk(effect.sayings, self.state)
        self.answer = words
        self.log(f"says: {words}")
        if self.screen:
            self.screen.say_line(in_figures(words))
        if self.voice and words:
            if self.ear:
                self.ear.mask(words)
            self.voice.say(words, effect.number)
            self.voice.soften(effect.soft)
        else:
            self.push(SpeechEnded(effect.number, True))

    def save(self) -> None:
        """Keeps progress; where that fails the session goes on and says so once."""
        if self.shelf is None or self.state is None:
            return
        try:
            kept = to_plain(self.state, self.clock.today()) | self.kept_too
            self.shelf.save(self.state.plan.fingerprint, kept)
        except Exception as trouble:  # whatever keeps it from being kept, the maker goes on
            if not self.unsaved:
                self.unsaved = str(trouble)
                self.push(DeviceLost("memory", self.unsaved))

    @property
    def fingerprint(self) -> str:
        """What ties notes and progress to the pattern, "" before one is open."""
        return self.state.plan.fingerprint if self.state else ""

    def told(self, trouble: str) -> None:
        """Trouble with the notes' sounds is said once."""
        if trouble:
            self.push(DeviceLost("notes", trouble))

    def keep(self) -> None:
        """Keeps what was changed of voice and wording; where that fails it is said once."""
        assert self.state is not None
        try:
            self.keep_tastes(self.state.tastes)
        except ReaderError as trouble:
            self.push(DeviceLost("settings", str(trouble)))

    def show(self) -> None:
        """Shows the present state."""
        if self.screen and self.choosing:
            ear = EarShown.MUTED if self.ear is None else EarShown.LISTENING
            shown = shown_choice(self.choosing, in_figures(self.answer))
            self.screen.show(replace(shown, ear=ear))
            return
        if self.screen is None or self.state is None:
            return
        state, view = self.state, view_of(self.state)
        step = find.step_at(state.plan, state.place, state.tastes.grain)
        part, row = find.part_at(state.plan, state.place), find.row_at(state.plan, state.place)
        shown = shown_step(view.title, part, row, step)
        question = in_figures(self.answer) if state.mode is Mode.CONFIRM else ""
        deaf = state.deaf or self.ear is None or bool(EAR_PARTS.intersection(state.lost))
        open_ear = EarShown.MUTED if deaf else EarShown.LISTENING
        ear = EARS.get(state.mode, open_ear)
        if len(state.lost) > 1:
            # Only the latest news is shown as said; what else is missing must not be lost to it.
            missing = f"Not there: {', '.join(state.lost)}."
            shown = replace(shown, trouble=(*shown.trouble, missing))
        self.screen.show(
            replace(shown, ear=ear, heard=view.heard, question=question, ready=view.ready)
        )

    def close(self) -> None:
        """Ends the screen's wait."""
        self.closing = True
        if self.screen:
            self.screen.close()
