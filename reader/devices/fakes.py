"""Fakes: scripted twins of every port, driven by a clock that stands still until it is told to
go on.
"""

from __future__ import annotations

import copy
from collections import deque
from collections.abc import Iterable
from dataclasses import dataclass

from reader.devices.ports import (
    ProgressUnreadable,
    Push,
    RoomHeard,
    SampleHeard,
    Samples,
    SpeechEnded,
    SpeechStarted,
)
from reader.listening.heard import Heard, HeardWord
from reader.listening.own_ear import OwnEar


class FakeClock:
    """Time that moves only when told to."""

    def __init__(self, now_s: float = 0.0, today: str = "2026-01-15") -> None:
        self._now_s, self._today = now_s, today

    def now_s(self) -> float:
        """Seconds since the fake began."""
        return self._now_s

    def today(self) -> str:
        """The date that was given."""
        return self._today

    def go_on(self, seconds: float) -> None:
        """Moves time forwards."""
        if seconds < 0:
            raise ValueError("time does not run backwards")
        self._now_s += seconds

    def set_today(self, today: str) -> None:
        """Another date, for coming back after a month."""
        self._today = today


@dataclass(frozen=True, slots=True)
class Said:
    """One text that the fake voice was given, and when."""

    at_s: float
    text: str
    number: int


class FakeVoice:
    """Speaks in the fake clock's time: a text takes its words divided by the rate.

    Call `listen_on` after moving the clock; it reports the texts that have ended by then.
    """

    def __init__(self, clock: FakeClock, push: Push) -> None:
        self._clock, self._push = clock, push
        self._now: Said | None = None
        self.said: list[Said] = []
        self.softened: list[bool] = []
        self.rate, self.volume = 170, 1.0
        self.closed = False

    def say(self, text: str, number: int) -> None:
        """Cuts off what is being said and begins this."""
        self.stop()
        self._now = Said(self._clock.now_s(), text, number)
        self.said.append(self._now)

    def stop(self) -> None:
        """Ends what is being said, incomplete, with the words said by now."""
        self.listen_on()
        said, self._now = self._now, None
        if said is not None:
            self._push(SpeechEnded(said.number, False, self._words_by_now(said)))

    def soften(self, on: bool) -> None:
        """Only noted."""
        self.softened.append(on)

    def set_rate(self, words_per_minute: int) -> None:
        """From now on, the present text included."""
        self.rate = words_per_minute

    def set_volume(self, share: float) -> None:
        """Only noted."""
        self.volume = share

    def speaking(self) -> str:
        """The whole text being said, "" when silent."""
        return self._now.text if self._now is not None else ""

    def close(self) -> None:
        """Stops."""
        self.stop()
        self.closed = True

    def ends_at_s(self) -> float | None:
        """When the present text will have ended, None when silent."""
        if self._now is None:
            return None
        return self._now.at_s + len(self._now.text.split()) * 60 / self.rate

    def listen_on(self) -> None:
        """Reports the present text's end when its time has come."""
        end_s, said = self.ends_at_s(), self._now
        if said is not None and end_s is not None and self._clock.now_s() >= end_s:
            self._now = None
            self._push(SpeechEnded(said.number, True, len(said.text.split())))

    def _words_by_now(self, said: Said) -> int:
        passed_s = self._clock.now_s() - said.at_s
        return min(len(said.text.split()), int(passed_s * self.rate / 60))


class FakeChimes:
    """Notes the names of the chimes."""

    def __init__(self) -> None:
        self.names: list[str] = []

    def chime(self, name: str) -> None:
        """Only noted."""
        self.names.append(name)


def heard(words: str, at_s: float = 0.0, certain: bool = True, doubt: str = "") -> Heard:
    """Heard as a perfect ear would give it: 0.35 s a word, decided half a second after the last."""
    each = words.split()
    parts = tuple(
        HeardWord(word, 1.0 if certain else 0.4, at_s + 0.35 * n, at_s + 0.35 * (n + 1))
        for n, word in enumerate(each)
    )
    end_s = at_s + 0.35 * len(each)
    return Heard(parts, certain, at_s, end_s, end_s + 0.5, doubt=doubt)


class FakeEar:
    """An ear that hears what the script says, and notes what it was asked to listen for."""

    def __init__(self, push: Push, clock: FakeClock | None = None) -> None:
        self._push, self._clock = push, clock or FakeClock()
        self.phrases: tuple[str, ...] = ()
        self.masked = ""
        self.muted = False
        self.closed = False

    def listen_for(self, phrases: tuple[str, ...]) -> None:
        """Only noted."""
        self.phrases = phrases

    def mask(self, words: str) -> None:
        """Only noted."""
        self.masked = words

    def mute(self, on: bool) -> None:
        """While on, the script's words are not heard."""
        self.muted = on

    def close(self) -> None:
        """Only noted."""
        self.closed = True

    def speak(self, words: str, certain: bool = True) -> None:
        """Somebody says this; words outside the phrases are heard as unknown, as a real ear
        would.
        """
        if self.muted or self.closed:
            return
        at_s = self._clock.now_s()
        self._push(SpeechStarted(at_s))
        known = {word for phrase in self.phrases for word in phrase.split()}
        seen = [word if not known or word in known else "[unk]" for word in words.split()]
        self._push(heard(" ".join(seen), at_s, certain))


class FakeSampleEar(FakeEar):
    """An ear that takes the samples that a script gives it."""

    def __init__(self, push: Push, clock: FakeClock | None = None) -> None:
        super().__init__(push, clock)
        self.waits = ""
        self.known: OwnEar | None = None

    def measure(self, seconds: float) -> None:
        """Waits for `quiet`."""
        self.waits = "room"

    def sample(self, room_db: float) -> None:
        """Waits for `says`."""
        self.waits = "sample"

    def idle(self) -> None:
        """Waits for nothing."""
        self.waits = ""

    def know(self, own: OwnEar) -> None:
        """Only noted."""
        self.known = own

    def hears(self, sound: Samples | None) -> None:
        """The room, or somebody, sounds so; None is nobody for long. Nothing where none waits."""
        waited, self.waits = self.waits, ""
        if waited == "room" and sound is not None:
            self._push(RoomHeard(sound))
        elif waited == "sample":
            self._push(SampleHeard(sound))


class FakeRecogniser:
    """Gives the next scripted answers at each feeding, whatever the sound."""

    def __init__(self, script: Iterable[tuple[Heard | SpeechStarted, ...]] = ()) -> None:
        self._script = deque(script)
        self.phrases: tuple[str, ...] = ()
        self.fed = 0

    def listen_for(self, phrases: tuple[str, ...]) -> None:
        """Only noted."""
        self.phrases = phrases

    def know(self, own: OwnEar | None) -> None:
        """Only noted."""

    def feed(self, samples: Samples) -> tuple[Heard | SpeechStarted, ...]:
        """The script's next answers, nothing when it is over."""
        self.fed += len(samples)
        return self._script.popleft() if self._script else ()

    def flush(self) -> tuple[Heard | SpeechStarted, ...]:
        """All that is left of the script."""
        rest = tuple(one for answers in self._script for one in answers)
        self._script.clear()
        return rest


class FakeShelf:
    """Progress kept in memory; with `broken` it fails as a read-only folder would."""

    def __init__(self) -> None:
        self.kept: dict[str, dict[str, object]] = {}
        self.saves = 0
        self.broken = False
        self.notice = ""

    def load(self, fingerprint: str) -> dict[str, object] | None:
        """A copy of what was saved last."""
        return copy.deepcopy(self.kept.get(fingerprint))

    def save(self, fingerprint: str, progress: dict[str, object]) -> None:
        """Keeps a copy; raises ProgressUnreadable while broken."""
        if self.broken:
            raise ProgressUnreadable("Your place cannot be saved, because the folder is read-only.")
        self.kept[fingerprint] = copy.deepcopy(progress)
        self.saves += 1
