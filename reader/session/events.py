"""Events: what happens to a session; time comes in with each as now_s, in seconds."""

from __future__ import annotations

from dataclasses import dataclass

from reader.commands.command import Command


@dataclass(frozen=True, slots=True)
class CommandGiven:
    """The maker asked for something, by word, key or foot."""

    command: Command
    now_s: float
    by_voice: bool = True


@dataclass(frozen=True, slots=True)
class NotSure:
    """Something was said that may have been for us; other: what it may have been as well, "" where
    it is only not clear."""

    words: str
    now_s: float
    other: str = ""


@dataclass(frozen=True, slots=True)
class TalkEnded:
    """A spoken text is over; complete: to its end."""

    number: int
    complete: bool
    now_s: float


@dataclass(frozen=True, slots=True)
class Ticked:
    """Time went by."""

    now_s: float


@dataclass(frozen=True, slots=True)
class DeviceWent:
    """A device is gone; the sentence says what to do."""

    device: str
    sentence: str
    now_s: float


@dataclass(frozen=True, slots=True)
class KeyUnknown:
    """A key was pressed that stands for nothing."""

    key: str
    now_s: float


@dataclass(frozen=True, slots=True)
class DeviceCame:
    """A device is back."""

    device: str
    now_s: float


Event = CommandGiven | NotSure | TalkEnded | Ticked | KeyUnknown | DeviceWent | DeviceCame
