"""Effects: what a session asks to be done; values only, the loop does them."""

from __future__ import annotations

from dataclasses import dataclass

from reader.plan.place import Place


@dataclass(frozen=True, slots=True)
class Saying:
    """What is to be said, before it is put into words (reader.wording.talk does that).

    kind names the sentence; place, number, words and more carry what it speaks of.
    """

    kind: str
    place: Place | None = None
    number: int | None = None
    words: str = ""
    more: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Say:
    """Say these, one after the other, as one text with this number; soft: in a low voice."""

    number: int
    sayings: tuple[Saying, ...]
    soft: bool = False


@dataclass(frozen=True, slots=True)
class Chime:
    """Play a chime: "heard", "not sure", "round complete", "trouble", "waiting"."""

    name: str


@dataclass(frozen=True, slots=True)
class Show:
    """The state has changed; show it."""


@dataclass(frozen=True, slots=True)
class Save:
    """Save progress, before anything that stands behind this."""


@dataclass(frozen=True, slots=True)
class StopTalking:
    """Silence at once."""


@dataclass(frozen=True, slots=True)
class SetVoice:
    """Words a minute and loudness from now on."""

    rate: int
    volume: float


@dataclass(frozen=True, slots=True)
class KeepTastes:
    """What the maker has changed of the voice and the wording is kept for next time."""


@dataclass(frozen=True, slots=True)
class Listen:
    """Listen, or stop listening."""

    on: bool


@dataclass(frozen=True, slots=True)
class KeepSound:
    """What is heard in these seconds is kept as sound under this name."""

    name: str
    seconds: int


@dataclass(frozen=True, slots=True)
class PlaySound:
    """The sound kept under this name is played once the words are over."""

    name: str


@dataclass(frozen=True, slots=True)
class Chosen:
    """A choice before the work is made; index: which of the names."""

    index: int


@dataclass(frozen=True, slots=True)
class Close:
    """The session is over."""


Effect = (
    Say
    | Chime
    | Show
    | Save
    | StopTalking
    | SetVoice
    | KeepTastes
    | KeepSound
    | PlaySound
    | Listen
    | Chosen
    | Close
)
