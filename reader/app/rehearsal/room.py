"""Room: the air between maker and program, twenty milliseconds at a time; both sides are kept as
sound.
"""

from __future__ import annotations

import wave
from collections.abc import Callable
from pathlib import Path

import numpy as np

from reader.devices.ports import FRAME, RATE_HZ, Push, Samples, SpeechEnded

Render = Callable[[str, int], Samples]
"""Words and words a minute in, 16 kHz mono sound out."""

SOFTENED = 0.3
"""Share of its loudness that the voice keeps while somebody speaks: common practice, no source."""


class Track:
    """One side's sound: what waits to be heard, and all that was heard."""

    def __init__(self) -> None:
        self._waiting = np.zeros(0, np.int16)
        self._heard: list[Samples] = []

    def play(self, samples: Samples) -> None:
        """Puts sound behind what already waits."""
        self._waiting = np.concatenate([self._waiting, samples.astype(np.int16)])

    def drop(self) -> None:
        """Forgets what waits."""
        self._waiting = np.zeros(0, np.int16)

    def silent(self) -> bool:
        """Whether nothing waits."""
        return len(self._waiting) == 0

    def frame(self, share: float = 1.0) -> Samples:
        """The next 320 samples, silence where nothing waits; they are kept."""
        out = np.zeros(FRAME, np.int16)
        taken = self._waiting[:FRAME]
        out[: len(taken)] = (taken * share).astype(np.int16)
        self._waiting = self._waiting[FRAME:]
        self._heard.append(out)
        return out

    def all_heard(self) -> Samples:
        """Everything so far."""
        return np.concatenate(self._heard) if self._heard else np.zeros(0, np.int16)


class RoomVoice:
    """The program's voice in the room: rendered for real, played by the room's own time."""

    def __init__(self, track: Track, render: Render, push: Push) -> None:
        self._track, self._render, self._push = track, render, push
        self._number: int | None = None
        self._text = ""
        self._words_per_minute, self._volume, self._soft = 170, 1.0, False
        self._length = 1
        self.last_text = ""
        self.started = 0

    def say(self, text: str, number: int) -> None:
        """Cuts off what is being said and says this."""
        self.stop()
        sound = self._render(text, self._words_per_minute)
        self._track.play((sound * self._volume).astype(np.int16))
        self._number, self._text, self._length = number, text, max(1, len(sound))
        self.last_text, self.started = text, self.started + 1

    def stop(self) -> None:
        """Silence at once; the end of what was cut off is reported."""
        if self._number is not None:
            self._track.drop()
            self._ended(complete=False)

    def soften(self, on: bool) -> None:
        """Lowers the voice while somebody speaks."""
        self._soft = on

    def set_rate(self, words_per_minute: int) -> None:
        """From the next words on."""
        self._words_per_minute = words_per_minute

    def set_volume(self, share: float) -> None:
        """From the next words on; 1 is as rendered."""
        self._volume = share

    def speaking(self) -> str:
        """The words being said, "" when silent."""
        return self._text

    def close(self) -> None:
        """Nothing to give back."""

    def frame(self) -> Samples:
        """The next 20 ms of the voice; reports the end of a text when it is reached."""
        out = self._track.frame(SOFTENED if self._soft else 1.0)
        if self._number is not None and self._track.silent():
            self._ended(complete=True)
        return out

    def _ended(self, complete: bool) -> None:
        number, words = self._number, len(self._text.split())
        self._number, self._text = None, ""
        if number is not None:
            self._push(SpeechEnded(number, complete, words if complete else 0))


def save_conversation(path: Path, maker: Samples, program: Samples) -> None:
    """One stereo WAV, 16 kHz: the maker on the left, the program on the right."""
    length = max(len(maker), len(program))
    both = np.zeros((length, 2), np.int16)
    both[: len(maker), 0] = maker
    both[: len(program), 1] = program
    with wave.open(str(path), "wb") as out:
        out.setnchannels(2)
        out.setsampwidth(2)
        out.setframerate(RATE_HZ)
        out.writeframes(both.tobytes())
