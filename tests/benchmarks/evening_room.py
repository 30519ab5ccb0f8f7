"""The room of an evening: the real loop, session and progress file; a clock and an ear that are
simulated, and a ledger that works out every heard phrase a second time.
"""

from __future__ import annotations

import random
from dataclasses import dataclass, field
from pathlib import Path

from reader.app.loop import KeyPressed, Loop, Tick
from reader.commands.phrases import ask_of_key, phrases_of
from reader.devices.fakes import FakeChimes, FakeClock, FakeVoice, heard
from reader.devices.progress_file import FileShelf
from reader.plan.step import Plan
from reader.session.start import begin
from reader.session.state import State, Tastes
from tests.benchmarks.evening_oracle import Ledger, spots_of

MISSED, UNSURE = 0.5, 0.25
"""Shares of mishearings that are not heard at all, and that are heard without certainty; the rest
is taken for another phrase. Our own choice."""


@dataclass
class Tallies:
    """What is counted over an evening; every field ends in the report."""

    commands: int = 0
    keys: int = 0
    misunderstood: int = 0
    from_film: int = 0
    interruptions: int = 0
    not_silent: int = 0
    wrong_moves: int = 0
    places_compared: int = 0
    lost_places: int = 0
    totals_compared: int = 0
    wrong_totals: int = 0
    restarts: int = 0
    pieces: int = 0
    repairs: int = 0
    longest_silence_s: float = 0.0
    faults: list[str] = field(default_factory=list)


class Room:
    """Everything but the maker. The place it compares with is the ledger's, never the session's."""

    def __init__(
        self, plan: Plan, text: str, folder: Path, chance: random.Random, misheard: float
    ) -> None:
        self.plan, self.folder, self.chance, self.misheard = plan, folder, chance, misheard
        self.spots = spots_of(plan, text)
        names = tuple(
            f"{('first ', 'second ', 'third ')[part.copy - 1] if part.copies > 1 else ''}"
            f"{part.name.lower()}"
            for part in plan.parts
        )
        self.ledger = Ledger(self.spots, names)
        self.clock, self.tallies = FakeClock(), Tallies()
        self.tastes = Tastes()
        self.open(0)

    def open(self, days: int) -> str:
        """The program started, at the kept place where there is one; gives its first words."""
        self.shelf = FileShelf(self.folder)
        self.chimes = FakeChimes()
        self.loop = Loop(
            None, self.chimes, None, None, self.shelf, self.clock, keep_tastes=self.keep
        )
        self.loop.voice = self.voice = FakeVoice(self.clock, self.loop.push)
        saved = self.shelf.load(self.plan.fingerprint)
        self.loop.start(*begin(self.plan, saved, self.tastes, self.clock.now_s(), days))
        self.settle()
        self.compare("after a start")
        return self.voice.said[-1].text

    def keep(self, tastes: Tastes) -> None:
        """Tastes kept for the next start, as the settings file would."""
        self.tastes = tastes

    def settle(self) -> None:
        """Everything in the queue is done."""
        self.voice.listen_on()
        while not self.loop.events.empty():
            self.loop.one(self.loop.events.get())

    def wait(self, seconds: float) -> None:
        """Time goes by."""
        self.clock.go_on(seconds)
        said = len(self.voice.said)
        self.loop.push(Tick())
        self.settle()
        for one in self.voice.said[said:]:
            self.ledger.told(one.text)

    def hear_out(self) -> None:
        """The maker listens to the end of what is being said."""
        ends = self.voice.ends_at_s()
        if ends is not None:
            self.wait(max(0.0, ends - self.clock.now_s()) + 0.01)

    def say(self, words: str) -> str:
        """The maker's words reach the ear as they may; gives the answer, "" for silence and "~" for
        the chime of not being sure.
        """
        self.tallies.commands += 1
        talking = bool(self.voice.speaking())
        self.tallies.interruptions += talking
        self.clock.go_on(0.35 * len(words.split()) + 0.5)
        self.settle()
        listened = self.loop.phrases()
        ear = self.ear(words, listened)
        before = self.ledger.at
        answer = self.reaches(ear, interrupted=talking)
        if ear != words:
            self.tallies.misunderstood += 1
            self.tallies.wrong_moves += before != self.ledger.at
        return answer

    def ear(self, words: str, listened: tuple[str, ...]) -> str:
        """What the ear makes of words: themselves, another phrase, "" or "~" for not sure."""
        lot = self.chance.random()
        if words not in listened or lot >= self.misheard:
            return words if words in listened else ""
        share = lot / self.misheard
        if share < MISSED:
            return ""
        if share < MISSED + UNSURE:
            return "~" + words
        return self.chance.choice(listened)

    def film(self) -> str:
        """A voice in the room that is taken for a command; gives what the program answers."""
        listened = self.loop.phrases()
        if not listened:
            return ""
        self.tallies.from_film += 1
        before = self.ledger.at
        answer = self.reaches(self.chance.choice(listened))
        self.tallies.wrong_moves += before != self.ledger.at
        return answer

    def reaches(self, ear: str, interrupted: bool = False) -> str:
        """What the ear gives goes through the loop; the place is compared with the ledger."""
        said, chimed = len(self.voice.said), len(self.chimes.names)
        words = ear.removeprefix("~")
        if words:
            spoken_before = self.voice.speaking()
            self.loop.push(heard(words, self.clock.now_s(), certain=not ear.startswith("~")))
            self.settle()
            still = interrupted and bool(spoken_before) and self.voice.speaking() == spoken_before
            if not ear.startswith("~"):
                self.tallies.not_silent += still and len(self.voice.said) == said
                self.ledger.heard(words, self.clock.now_s())
        for one in self.voice.said[said:]:
            self.ledger.told(one.text)
        self.compare(f"after {ear!r}")
        if len(self.voice.said) > said:
            return self.voice.said[-1].text
        return "~" if "not sure" in self.chimes.names[chimed:] else ""

    def press(self, key: str) -> str:
        """A key, which is never misheard."""
        self.tallies.keys += 1
        ask = ask_of_key(key)
        assert ask is not None
        said = len(self.voice.said)
        self.clock.go_on(0.3)
        self.loop.push(KeyPressed(key))
        self.settle()
        if self.ledger.mode == "paused" and key not in ("w", "q"):
            self.ledger.mode = "counting" if self.ledger.mode == "counting" else "step"
        self.ledger.heard(phrases_of((ask,))[0], self.clock.now_s())
        for one in self.voice.said[said:]:
            self.ledger.told(one.text)
        self.compare(f"after the key {key}")
        return self.voice.said[-1].text if len(self.voice.said) > said else ""

    def state(self) -> State:
        """The session's state; read for its phrases and for comparing, never by the maker."""
        assert self.loop.state is not None
        return self.loop.state

    def compare(self, when: str) -> None:
        """The session's place beside the ledger's; a difference is a lost place."""
        self.tallies.places_compared += 1
        place, spot = self.state().place, self.spots[self.ledger.at]
        if (place.part, place.row, place.step) != (spot.part, spot.row, spot.step):
            self.lost(f"{when}: the session is at {place}, it should be at {spot}")
            known = {(one.part, one.row, one.step): at for at, one in enumerate(self.spots)}
            self.ledger.at = known[place.part, place.row, place.step]

    def lost(self, fault: str) -> None:
        """A place that was lost is counted, and the first few are told."""
        self.tallies.lost_places += 1
        self.tallies.faults.append(f"{self.clock.now_s():7.0f} s: {fault}")

    def power_cut(self, seconds: float, days: int) -> str:
        """The program is gone without a word and started again from the saved file."""
        self.tallies.restarts += 1
        self.ledger.mode = "step"
        self.ledger.grain = self.tastes.grain.value
        self.ledger.moves = []
        self.clock.go_on(seconds)
        return self.open(days)

    def believed(self, at: int) -> None:
        """The maker is sure to be at a spot, the yarn proves it: the session must be there."""
        if at != self.ledger.at:
            program = self.spots[self.ledger.at]
            self.lost(f"the maker is at {self.spots[at]}, the program at {program}")
