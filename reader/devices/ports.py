"""Ports: what the program needs from the outside, as protocols; each real device and its scripted
twin keep them.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Protocol

import numpy as np
from numpy.typing import NDArray

from reader.listening.heard import Heard
from reader.listening.own_ear import OwnEar


class ReaderError(Exception):
    """Something the maker can do something about; its text is one sentence that can be spoken."""


class PatternUnreadable(ReaderError):
    """The pattern file is missing, or no text can be got out of it."""


class ProgressUnreadable(ReaderError):
    """Saved progress cannot be read or written."""


class ModelMissing(ReaderError):
    """There is no ear: the model directory is missing or broken."""


class DeviceUnavailable(ReaderError):
    """A microphone, speaker or voice cannot be opened."""


RATE_HZ = 16_000
"""Sound the ear works on: 16 kHz mono, the rate of the recogniser's features."""

FRAME = 320
"""Samples a frame: 20 ms."""

Samples = NDArray[np.int16]


@dataclass(frozen=True, slots=True)
class SpeechEnded:
    """A spoken text is over: its number, whether it was heard to its end, how many words of it."""

    number: int
    complete: bool
    words_said: int = 0


@dataclass(frozen=True, slots=True)
class DeviceLost:
    """A device went away: "microphone", "speaker", "voice" or "recogniser"; the sentence tells what
    to do.
    """

    device: str
    sentence: str


@dataclass(frozen=True, slots=True)
class DeviceBack:
    """A device works again."""

    device: str


@dataclass(frozen=True, slots=True)
class SpeechStarted:
    """Somebody began to speak, at this second of the sound stream."""

    at_s: float


@dataclass(frozen=True, slots=True)
class RoomHeard:
    """What was heard while the room was listened to: int16[n] at 16 kHz."""

    sound: Samples


@dataclass(frozen=True, slots=True)
class SampleHeard:
    """One utterance taken as a sample; None where nobody spoke for long."""

    sound: Samples | None


Push = Callable[[object], None]
"""Devices push what happened into the loop's queue through this; any thread may, and it never
blocks.
"""


class Voice(Protocol):
    """Speaks; never blocks longer than 20 ms."""

    def say(self, text: str, number: int) -> None: ...
    def stop(self) -> None: ...
    def soften(self, on: bool) -> None: ...
    def set_rate(self, words_per_minute: int) -> None: ...
    def set_volume(self, share: float) -> None: ...
    def speaking(self) -> str: ...
    def close(self) -> None: ...


class ChimePlayer(Protocol):
    """Plays short chimes by name: "heard", "not sure", "round complete", "trouble", "waiting"."""

    def chime(self, name: str) -> None: ...


class Ear(Protocol):
    """Microphone, echo canceller and recogniser together; pushes SpeechStarted, Heard, DeviceLost
    and DeviceBack.
    """

    def listen_for(self, phrases: tuple[str, ...]) -> None: ...
    def mask(self, words: str) -> None: ...
    def mute(self, on: bool) -> None: ...
    def close(self) -> None: ...


class SampleEar(Ear, Protocol):
    """An ear that also takes single sounds; pushes RoomHeard and SampleHeard. Only one of three
    goes on at a time: listening to the room, taking a sample, listening for phrases.
    """

    def measure(self, seconds: float) -> None: ...
    def sample(self, room_db: float) -> None: ...
    def idle(self) -> None: ...
    def know(self, own: OwnEar) -> None: ...


class Recogniser(Protocol):
    """Turns 16 kHz int16 samples into utterances under a grammar; owns no device and no thread."""

    def listen_for(self, phrases: tuple[str, ...]) -> None: ...
    def know(self, own: OwnEar | None) -> None: ...
    def feed(self, samples: Samples) -> tuple[Heard | SpeechStarted, ...]: ...
    def flush(self) -> tuple[Heard | SpeechStarted, ...]: ...


class Clock(Protocol):
    """Seconds that never run backwards, and the calendar."""

    def now_s(self) -> float: ...
    def today(self) -> str: ...


class Shelf(Protocol):
    """Keeps progress: saves whole or not at all, keeps the last good copy."""

    def load(self, fingerprint: str) -> dict[str, object] | None: ...
    def save(self, fingerprint: str, progress: dict[str, object]) -> None: ...
