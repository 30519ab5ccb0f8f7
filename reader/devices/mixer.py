"""Mixer: sentences and chimes in, the next samples for the speaker out;
owns no device, so its time is the caller's.
"""

from __future__ import annotations

import threading
from collections import deque
from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from reader.devices.ports import RATE_HZ, Samples
from reader.devices.sound_ring import SoundRing

Floats = NDArray[np.float64]

FADE = RATE_HZ * 5 // 1000
"""5 ms: short enough to be silence at once, long enough not to click.
Common practice, no source.
"""

SOFTENED = 10 ** (-12 / 20)
"""12 dB down while somebody speaks."""

SOFT_FOR = RATE_HZ * 5 // 2
"""Samples after which a lowered voice comes back by itself: a command and its decision take 2 s,
and of talk that is no command nobody tells that it has ended. Judgement.
"""

RAMP = RATE_HZ * 20 // 1000
"""20 ms from one loudness to another, against clicks. Common practice, no source."""


@dataclass(eq=False, slots=True)
class Clip:
    """A sentence on its way to the speaker; `played` samples of its sound have been handed over."""

    sound: Samples
    over: Callable[[Clip], None] | None = None
    played: int = 0


class Mixer:
    """Everything that is heard goes through here, and is kept in `heard` as the echo's
    reference.
    """

    def __init__(self, heard: SoundRing | None = None) -> None:
        self.heard = heard or SoundRing()
        self._lock = threading.Lock()
        self._clips: deque[Clip] = deque()
        self._chimes: list[Clip] = []
        self._tail = np.zeros(0, np.float64)
        self._volume, self._soft_left = 1.0, 0
        self._level = 1.0

    def play(self, clip: Clip) -> None:
        """Puts a sentence behind those that wait."""
        with self._lock:
            self._clips.append(clip)

    def chime(self, sound: Samples) -> None:
        """Plays a short sound at once, over whatever is spoken."""
        with self._lock:
            self._chimes.append(Clip(sound))

    def drop(self) -> None:
        """Forgets every waiting sentence;
        the one being spoken fades within 5 ms. Chimes ring on.
        """
        with self._lock:
            if self._clips and self._clips[0].played > 0:
                rest = self._clips[0].sound[self._clips[0].played :][:FADE].astype(np.float64)
                self._tail = rest * np.linspace(1.0, 0.0, len(rest)) * self._level
            self._clips.clear()

    def set_volume(self, share: float) -> None:
        """0 is silence, 1 as rendered, 2 the most; applies to what sounds already."""
        self._volume = max(0.0, min(2.0, share))

    def soften(self, on: bool) -> None:
        """Lowers speech by 12 dB, until it is taken back or two and a half seconds are over."""
        self._soft_left = SOFT_FOR if on else 0

    def quiet(self) -> bool:
        """Whether nothing waits to be heard."""
        with self._lock:
            return not self._clips and not self._chimes and len(self._tail) == 0

    def pull(self, length: int, at_s: float = 0.0) -> Samples:
        """The next int16[length] for the speaker; sentences that end here are told so."""
        with self._lock:
            self._soft_left = max(0, self._soft_left - length)
            if self._nothing():
                return self._silence(length, at_s)
            mixed, over = self._speech(length)
            mixed[: len(self._tail)] += self._tail[:length]
            self._tail = self._tail[length:]
            for chime in self._chimes:
                _add(mixed, chime, self._volume)
            self._chimes = [c for c in self._chimes if c.played < len(c.sound)]
        out = np.clip(mixed, -32768, 32767).astype(np.int16)
        self.heard.write(out, at_s)
        for clip in over:
            if clip.over is not None:
                clip.over(clip)
        return out

    def _nothing(self) -> bool:
        wanted = self._volume * (SOFTENED if self._soft_left else 1.0)
        settled = abs(self._level - wanted) < 1e-6
        return settled and not self._clips and not self._chimes and len(self._tail) == 0

    def _silence(self, length: int, at_s: float) -> Samples:
        out = np.zeros(length, np.int16)
        self.heard.write(out, at_s)
        return out

    def _speech(self, length: int) -> tuple[Floats, list[Clip]]:
        mixed, filled = np.zeros(length), 0
        over: list[Clip] = []
        while self._clips and filled < length:
            clip = self._clips[0]
            taken = clip.sound[clip.played : clip.played + length - filled]
            mixed[filled : filled + len(taken)] = taken
            clip.played += len(taken)
            filled += len(taken)
            if clip.played >= len(clip.sound):
                over.append(self._clips.popleft())
        return np.multiply(mixed, self._levels(length)), over

    def _levels(self, length: int) -> Floats:
        """Loudness of each sample: towards the wanted one by at most one full step in 20 ms."""
        wanted = self._volume * (SOFTENED if self._soft_left else 1.0)
        steps = np.arange(1, length + 1) / RAMP
        way = np.clip(wanted - self._level, -steps, steps)
        levels: Floats = self._level + way
        self._level = float(levels[-1]) if length else self._level
        return levels


def _add(mixed: Floats, clip: Clip, volume: float) -> None:
    taken = clip.sound[clip.played : clip.played + len(mixed)]
    mixed[: len(taken)] += taken * volume
    clip.played += len(taken)
