"""Events: what happened outside, as values; each carries the time it happened."""

from __future__ import annotations

from dataclasses import dataclass

from reader.listening.heard import Heard


@dataclass(frozen=True, slots=True)
class WordsHeard:
    """The recogniser decided. now_s: seconds of the loop's clock, as in every event."""

    heard: Heard
    now_s: float


@dataclass(frozen=True, slots=True)
class WordsTyped:
    """The maker typed words in place of saying them; they are certain."""

    words: str
    now_s: float


@dataclass(frozen=True, slots=True)
class KeyPressed:
    """The maker pressed a key, by its name on the screen's side ("n", "space", "pagedown")."""

    key: str
    now_s: float


@dataclass(frozen=True, slots=True)
class SpeechOver:
    """The text of this number is over; complete: it was heard to its end."""

    number: int
    complete: bool
    now_s: float


@dataclass(frozen=True, slots=True)
class TimerFired:
    """A timer that was set has run out."""

    name: str
    now_s: float


@dataclass(frozen=True, slots=True)
class DeviceGone:
    """A device went away; sentence: what the maker can do about it."""

    device: str
    sentence: str
    now_s: float


@dataclass(frozen=True, slots=True)
class DeviceThere:
    """A device works again."""

    device: str
    now_s: float


@dataclass(frozen=True, slots=True)
class Trouble:
    """Something else went wrong that the maker should know, in one sentence (saving failed)."""

    sentence: str
    now_s: float


Event = (
    WordsHeard
    | WordsTyped
    | KeyPressed
    | SpeechOver
    | TimerFired
    | DeviceGone
    | DeviceThere
    | Trouble
)
