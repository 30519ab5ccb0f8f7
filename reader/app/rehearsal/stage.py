"""Stage: plays a script against the real recogniser, session and voice, twenty milliseconds at a
time.
"""

from __future__ import annotations

import time
from collections.abc import Callable
from pathlib import Path

import numpy as np

from reader.app.loop import KeyPressed, Loop
from reader.app.rehearsal.maker_voice import Speak
from reader.app.rehearsal.room import RoomVoice, Track, save_conversation
from reader.app.rehearsal.script import Act, Line
from reader.devices.fakes import FakeChimes, FakeClock, FakeShelf
from reader.devices.ports import FRAME, RATE_HZ, Samples
from reader.devices.recogniser import VoskRecogniser
from reader.devices.renderer import Renderer
from reader.listening.heard import Heard
from reader.plan import find
from reader.plan.step import Plan
from reader.session.progress import from_plain
from reader.session.start import begin
from reader.session.state import Tastes
from reader.wording.say import say_label, say_part

ANSWER_S = 4.0
"""Seconds after the maker's words in which they must have been understood."""
LONGEST_TALK_S = 60.0


class RoomEar:
    """The ear in the room: keeps the port, fed by the stage."""

    def __init__(self, recogniser: VoskRecogniser) -> None:
        self.recogniser = recogniser

    def listen_for(self, phrases: tuple[str, ...]) -> None:
        """From now on these phrases."""
        self.recogniser.listen_for(phrases)

    def mask(self, words: str) -> None:
        """The room has no echo."""

    def mute(self, on: bool) -> None:
        """Never muted."""

    def close(self) -> None:
        """Nothing to give back."""


class Stage:
    """One rehearsal. wrong: what went wrong, in sentences."""

    def __init__(
        self,
        plan: Plan,
        speak: Speak,
        model: str,
        fast: bool,
        out: Path,
        tell: Callable[[str], None],
    ) -> None:
        self.plan, self.speak, self.fast, self.out, self.tell = plan, speak, fast, out, tell
        self.clock, self.shelf = FakeClock(), FakeShelf()
        self.maker, self.program = Track(), Track()
        self.renderer = Renderer()
        self.recogniser = VoskRecogniser(model)
        self.wrong: list[str] = []
        self.log: list[str] = []
        self.spoken = self.understood = self.mistaken = self.rounds = 0
        self.longest_s = 0.0
        self.heard: list[Heard] = []
        self.began = time.monotonic()
        self.tastes = Tastes()
        self.loop = self.begin()

    def keep_tastes(self, tastes: Tastes) -> None:
        """Keeps what was changed by voice for the next start, as the settings file does."""
        self.tastes = tastes

    def begin(self) -> Loop:
        """A session on the stage, at the kept place where there is one."""
        loop = Loop(
            None,
            FakeChimes(),
            RoomEar(self.recogniser),
            None,
            self.shelf,
            self.clock,
            self.note,
            keep_tastes=self.keep_tastes,
        )
        loop.voice = self.voice = RoomVoice(self.program, self.renderer.render, loop.push)
        saved = self.shelf.load(self.plan.fingerprint)
        state, effects = begin(self.plan, saved, self.tastes, self.clock.now_s())
        loop.start(state, effects)
        self.loop = loop
        self.talk_to_end()
        return loop

    def note(self, line: str) -> None:
        """Into the log; what the program says is printed too."""
        self.log.append(f"{self.clock.now_s():8.2f} {line}")
        if line.startswith("says: "):
            self.tell(f"program: {line[6:]}")

    def frame(self) -> None:
        """Twenty milliseconds go by for everybody."""
        sound = self.maker.frame()
        self.voice.frame()
        self.clock.go_on(FRAME / RATE_HZ)
        for one in self.recogniser.feed(sound):
            if isinstance(one, Heard):
                self.heard.append(one)
            self.loop.push(one)
        while not self.loop.events.empty():
            self.loop.one(self.loop.events.get())
        if not self.fast:
            ahead = self.clock.now_s() - (time.monotonic() - self.began)
            if ahead > 0:
                time.sleep(ahead)

    def wait(self, seconds: float) -> None:
        """Silence of the maker."""
        for _ in range(round(seconds * RATE_HZ / FRAME)):
            self.frame()

    def talk_to_end(self) -> None:
        """Until the program has said what it says."""
        for _ in range(round(LONGEST_TALK_S * RATE_HZ / FRAME)):
            if not self.voice.speaking():
                return
            self.frame()

    def act(self, line: Line) -> None:
        """One line of the script."""
        if line.act in (Act.MAKER, Act.OVER, Act.ASIDE):
            self.say(line)
        elif line.act is Act.KEY:
            self.tell(f"key: {line.words}")
            self.loop.push(KeyPressed(line.words))
            self.wait(0.1)
        elif line.act is Act.WAIT:
            self.wait(float(line.words))
        elif line.act is Act.SAYS:
            self.check(
                line,
                line.words.lower() in self.loop.answer.lower(),
                f"the program said {self.loop.answer!r}",
            )
        elif line.act is Act.AT:
            self.check(
                line, line.words.lower() in self.place().lower(), f"the place is {self.place()}"
            )
        elif line.act is Act.LEAVE:
            self.leave(line)

    def check(self, line: Line, holds: bool, found: str) -> None:
        """A line that must hold."""
        if not holds:
            self.wrong.append(f"line {line.number}, {line.act.value}: {line.words}: {found}.")
            self.tell(f"WRONG: {self.wrong[-1]}")

    def say(self, line: Line) -> None:
        """The maker speaks; a command must be understood as exactly these words."""
        if line.act is not Act.OVER:
            self.talk_to_end()
        self.tell(f"{line.act.value}: {line.words}")
        self.note(f"{line.act.value}: {line.words}")
        before = len(self.heard)
        sound: Samples = self.speak(line.words)
        self.maker.play(np.concatenate([sound, np.zeros(RATE_HZ // 10, np.int16)]))
        end_s = self.clock.now_s() + len(sound) / RATE_HZ
        while self.clock.now_s() < end_s + ANSWER_S:
            self.frame()
            if self.clock.now_s() >= end_s and any(one.certain for one in self.heard[before:]):
                break
        self.judge(line, [one for one in self.heard[before:] if one.certain])

    def judge(self, line: Line, certain: list[Heard]) -> None:
        """Counts what came of the maker's words."""
        texts = [one.text for one in certain]
        if line.act is Act.ASIDE:
            self.check(line, not texts, f"it was taken for {texts}")
            self.mistaken += len(texts)
            return
        self.spoken += 1
        self.understood += texts == [line.words]
        self.mistaken += sum(text != line.words for text in texts)
        self.longest_s = max([self.longest_s, *(one.decided_s - one.ended_s for one in certain)])
        self.check(line, texts == [line.words], f"heard {texts or 'nothing'}")

    def place(self) -> str:
        """Part and row of the present place, in words."""
        state = self.loop.state
        if state is None:
            return ""
        part, row = find.part_at(state.plan, state.place), find.row_at(state.plan, state.place)
        return f"{say_part(part)} {say_label(row)}"

    def leave(self, line: Line) -> None:
        """A power cut, then a new start: the place must be the same."""
        before = self.loop.state.place if self.loop.state else None
        self.rounds += self.loop.state.rounds_announced if self.loop.state else 0
        self.tell("(the program is stopped and started again)")
        self.voice.stop()
        self.begin()
        kept = from_plain(self.plan, self.shelf.load(self.plan.fingerprint) or {})
        self.check(line, kept is not None and kept.place == before, "the place was lost")

    def figures(self) -> str:
        """The closing line."""
        rounds = self.rounds + (self.loop.state.rounds_announced if self.loop.state else 0)
        steps = len(self.loop.state.journal) if self.loop.state else 0
        return (
            f"commands spoken {self.spoken}, understood {self.understood}, wrong {self.mistaken}; "
            f"moves {steps}, rounds announced {rounds}, longest delay {self.longest_s:.2f} s, "
            f"checks failed {len(self.wrong)}"
        )

    def close(self) -> None:
        """Leaves sound and log."""
        save_conversation(
            self.out / "conversation.wav", self.maker.all_heard(), self.program.all_heard()
        )
        (self.out / "log.txt").write_text("\n".join(self.log) + "\n", encoding="utf-8")
        self.renderer.close()
