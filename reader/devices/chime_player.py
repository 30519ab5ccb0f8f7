"""Chime player: notes in, short soft sounds out, over whatever is being spoken."""

from __future__ import annotations

from collections.abc import Mapping

import numpy as np

from reader.devices.mixer import Mixer
from reader.devices.ports import RATE_HZ, Samples

Notes = tuple[tuple[float, float, float], ...]
"""Notes one after another: pitch in hertz (0 is a rest), length in milliseconds, loudness 0 to
1.
"""

FULL = 12_000
"""Peak of loudness 1: some 9 dB below the largest sample, beside speech neither lost nor
startling. Judgement.
"""

ATTACK_MS = 6.0
"""Rise of each note, against clicks. Common practice, no source."""


def sound_of(notes: Notes) -> Samples:
    """int16[n], 16 kHz: each note a struck tone with a quiet octave, dying away over its length."""
    parts = [_tone(*note) for note in notes]
    return np.concatenate(parts) if parts else np.zeros(0, np.int16)


def _tone(hz: float, length_ms: float, level: float) -> Samples:
    count = round(RATE_HZ * length_ms / 1000)
    if hz <= 0 or count == 0:
        return np.zeros(count, np.int16)
    at_s = np.arange(count) / RATE_HZ
    wave = 0.85 * np.sin(2 * np.pi * hz * at_s) + 0.15 * np.sin(4 * np.pi * hz * at_s)
    rise = np.minimum(1.0, at_s * 1000 / ATTACK_MS)
    fall = np.cos(np.linspace(0, np.pi / 2, count)) ** 1.5
    loud = min(1.0, max(0.0, level)) * FULL
    return (wave * rise * fall * loud).astype(np.int16)


class MixedChimes:
    """Plays chimes through the mixer; a name that it does not know stays silent."""

    def __init__(self, mixer: Mixer, table: Mapping[str, Notes]) -> None:
        self._mixer = mixer
        self._sounds = {name: sound_of(notes) for name, notes in table.items()}

    def chime(self, name: str) -> None:
        """Sounds at once; never waits."""
        sound = self._sounds.get(name)
        if sound is not None:
            self._mixer.chime(sound)
