"""Effects: what should happen outside, as values; the loop performs them in order."""

from __future__ import annotations

from dataclasses import dataclass

from reader.session.saying import Saying
from reader.session.view import View


@dataclass(frozen=True, slots=True)
class Say:
    """Speak this, cutting off what is being said; its end comes back as SpeechOver(number)."""

    number: int
    saying: Saying


@dataclass(frozen=True, slots=True)
class Chime:
    """Sound a chime: "heard", "not sure", "round complete", "trouble" or "waiting"."""

    name: str


@dataclass(frozen=True, slots=True)
class Show:
    """Show this on the screen."""

    view: View


@dataclass(frozen=True, slots=True)
class Save:
    """Save this progress (plain values only) before any later effect is performed."""

    progress: dict[str, object]


@dataclass(frozen=True, slots=True)
class StopTalking:
    """Silence at once."""


@dataclass(frozen=True, slots=True)
class SetTimer:
    """Send TimerFired(name) after so many seconds; a timer of the same name starts anew."""

    name: str
    seconds: float


@dataclass(frozen=True, slots=True)
class CancelTimer:
    """Forget the timer of this name, if there is one."""

    name: str


@dataclass(frozen=True, slots=True)
class SetRate:
    """Speak at so many words a minute from now on."""

    words_per_minute: int


@dataclass(frozen=True, slots=True)
class SetVolume:
    """Speak at this share of full loudness, 0 to 1."""

    share: float


@dataclass(frozen=True, slots=True)
class KeepSound:
    """Keep what the maker says in the next seconds as a note of this name."""

    name: str
    seconds: float


@dataclass(frozen=True, slots=True)
class Close:
    """The session is over; everything is saved."""


Effect = (
    Say
    | Chime
    | Show
    | Save
    | StopTalking
    | SetTimer
    | CancelTimer
    | SetRate
    | SetVolume
    | KeepSound
    | Close
)
