"""Sounds of spoken notes: kept when their time is over, played when the notes have been read."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field

from reader.devices.ports import ReaderError, Samples
from reader.session.effects import KeepSound


@dataclass
class NoteSounds:
    """The sounds of one session's notes. Each call outside is left at None where there is no
    device.

    recent: the last seconds that were heard. keep, load: a note's sound in the maker's folder, by
    the pattern's fingerprint and the note's name. play, stop: through the speaker.
    """

    recent: Callable[[float], Samples] | None = None
    keep: Callable[[str, str, Samples], object] | None = None
    load: Callable[[str, str], Samples] | None = None
    play: Callable[[Samples], None] | None = None
    stop: Callable[[], None] | None = None
    waiting: list[tuple[float, KeepSound]] = field(default_factory=list)
    to_play: list[str] = field(default_factory=list)
    playing: bool = False

    def keep_later(self, wanted: KeepSound, now_s: float) -> None:
        """Keeps what will have been heard by then."""
        self.waiting.append((now_s + wanted.seconds, wanted))

    def keep_due(self, of: str, now_s: float) -> str:
        """Keeps the sounds whose time is over; a sentence of what went wrong, or ""."""
        due = [one for at, one in self.waiting if at <= now_s]
        self.waiting = [(at, one) for at, one in self.waiting if at > now_s]
        if self.recent is None or self.keep is None:
            return ""
        try:
            for one in due:
                self.keep(of, one.name, self.recent(one.seconds))
        except ReaderError as trouble:
            return str(trouble)
        return ""

    def play_waiting(self, of: str) -> str:
        """Plays what is to be heard now that the words are over; a sentence of trouble, or ""."""
        names, self.to_play = self.to_play, []
        if self.load is None or self.play is None:
            return ""
        try:
            for name in names:
                self.play(self.load(of, name))
                self.playing = True
        except ReaderError as trouble:
            return str(trouble)
        return ""

    def silence(self) -> None:
        """A command came: nothing more is played."""
        self.to_play = []
        if self.playing and self.stop is not None:
            self.stop()
        self.playing = False
