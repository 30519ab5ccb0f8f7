"""Trace: a sound as the listening model's network sees it, frame by frame; pure."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from reader.listening.acoustics import Floats, Network
from reader.listening.mfcc import SHIFT, WINDOW, mfcc

FRAME_S = 0.03
"""Seconds from one frame of a trace to the next."""
SPEAKING = 0.3
"""From here on a frame counts as speech: the network's share of all that is not blank."""
AROUND = 2
"""Frames kept to each side of a word."""
BELOW_PEAK_DB = 20.0
"""Where the network takes a sound for no speech, what lies within so much of its peak is it."""
COPY_DB = 10.0
"""How far below a sample the noise of its copy lies. This, the layer and the weights in likeness
were compared on the speakers for choosing only: copies over music or talk brought nothing."""
LAYER, SCORES = "head1.norm", "scores"
"""The network's last layer but the scores, and the scores. Lower layers took more other speech;
the scores alone told words apart less well."""


@dataclass(frozen=True, slots=True)
class Trace:
    """shape: unit vectors [n, 192]. speaking: [n], how surely each frame is speech, 0 to 1.
    loud_db: [n], its level.
    """

    shape: Floats
    speaking: Floats
    loud_db: Floats

    def __len__(self) -> int:
        return len(self.speaking)

    def part(self, start: int, end: int) -> Trace:
        """The frames from start up to end."""
        return Trace(self.shape[start:end], self.speaking[start:end], self.loud_db[start:end])


def trace_of(network: Network, sound: NDArray[np.int16]) -> Trace | None:
    """The trace of a sound at 16 kHz; None where it is too short for one window."""
    cepstra = mfcc(sound)
    if not len(cepstra):
        return None
    shape, scores = network.outputs((LAYER, SCORES), cepstra)
    shape = shape / np.maximum(np.linalg.norm(shape, axis=1, keepdims=True), 1e-6)
    places = np.arange(len(scores)) * 3 * SHIFT
    power = np.array([_power(sound[at : at + WINDOW]) for at in places], np.float32)
    speaking = np.asarray(1 - np.exp(scores[:, 0]), np.float32)
    return Trace(shape, speaking, np.asarray(10 * np.log10(power + 1), np.float32))


def word_in(trace: Trace) -> tuple[int, int]:
    """First frame of what was said and the frame behind its last."""
    on = np.flatnonzero(trace.speaking > SPEAKING)
    if not len(on):
        on = np.flatnonzero(trace.loud_db > trace.loud_db.max() - BELOW_PEAK_DB)
    return max(0, int(on[0]) - AROUND), min(len(trace), int(on[-1]) + 1 + AROUND)


def sample_traces(network: Network, sound: NDArray[np.int16]) -> tuple[Trace, ...]:
    """A maker's sample as it is compared with: as it was said, and over a noise."""
    plain = trace_of(network, sound)
    noisy = trace_of(network, over_noise(sound, COPY_DB))
    if plain is None or noisy is None:
        return ()
    start, end = word_in(plain)
    return plain.part(start, end), noisy.part(start, end)


def over_noise(sound: NDArray[np.int16], below_db: float) -> NDArray[np.int16]:
    """The sound over a pink noise, always the same, so many decibels below its loud parts."""
    length = len(sound)
    white = np.fft.rfft(np.random.default_rng(2).standard_normal(length))
    pink = np.fft.irfft(white / np.sqrt(np.maximum(np.arange(len(white)), 1)), length)
    blocks = sound[: length // SHIFT * SHIFT].astype(np.float64).reshape(-1, SHIFT)
    power = (blocks**2).mean(1)
    spoken = float(power[power > power.max() * 10**-2.5].mean()) if power.any() else 1.0
    gain = np.sqrt(spoken / 10 ** (below_db / 10) / np.mean(pink**2))
    mixed = np.clip(np.rint(sound + gain * pink), -32768, 32767)
    return np.asarray(mixed, np.int16)


def _power(sound: NDArray[np.int16]) -> float:
    return float(np.mean(sound.astype(np.float64) ** 2)) if len(sound) else 0.0

