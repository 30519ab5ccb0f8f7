"""Sound -> how loud each of 80 bands is every 10 ms, as Whisper's encoder takes it; pure."""

from __future__ import annotations

from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float32]

RATE_HZ, WINDOW, SHIFT, BINS = 16_000, 400, 160, 80
FLOOR, RANGE = 1e-10, 8.0
"""The least power, and how far below the loudest (in powers of ten) anything is told apart."""
_STEP_HZ, _BEND_HZ, _FOLD = 200.0 / 3.0, 1_000.0, np.log(6.4) / 27.0


def _mel(hz: float) -> float:
    if hz < _BEND_HZ:
        return hz / _STEP_HZ
    return float(_BEND_HZ / _STEP_HZ + np.log(hz / _BEND_HZ) / _FOLD)


def _hz(mel: NDArray[np.float64]) -> NDArray[np.float64]:
    bend = _BEND_HZ / _STEP_HZ
    return np.where(mel < bend, mel * _STEP_HZ, _BEND_HZ * np.exp(_FOLD * (mel - bend)))


@lru_cache(1)
def mel_filters() -> Floats:
    """[80, 201]: triangles of equal area on a scale that is even to 1 kHz and logarithmic above.

    Source: Slaney, "Auditory Toolbox" (1998), in the form that Whisper was trained with.
    """
    edges = _hz(np.linspace(0.0, _mel(RATE_HZ / 2), BINS + 2))
    bins = np.arange(WINDOW // 2 + 1) * RATE_HZ / WINDOW
    rise = (bins[None] - edges[:-2, None]) / np.diff(edges)[:-1, None]
    fall = (edges[2:, None] - bins[None]) / np.diff(edges)[1:, None]
    area = 2.0 / (edges[2:] - edges[:-2])
    return np.asarray(np.maximum(0, np.minimum(rise, fall)) * area[:, None], np.float32)


def log_mel(sound: NDArray[np.int16]) -> Floats:
    """[80, n // 160] of a sound at 16 kHz of 400 samples or more; its level does not matter."""
    padded = np.pad(sound.astype(np.float32) / 32_768, WINDOW // 2, mode="reflect")
    every = np.lib.stride_tricks.sliding_window_view(padded, WINDOW)
    frames = every[::SHIFT][: len(sound) // SHIFT]
    window = 0.5 - 0.5 * np.cos(2 * np.pi * np.arange(WINDOW) / WINDOW)
    power = np.abs(np.fft.rfft(frames * window.astype(np.float32), axis=1)) ** 2
    loud = np.log10(np.maximum(mel_filters() @ power.T.astype(np.float32), FLOOR))
    return np.asarray((np.maximum(loud, loud.max() - RANGE) + 4) / 4, np.float32)
