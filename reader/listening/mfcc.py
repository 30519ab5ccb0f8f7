"""Sound -> the 40 cepstra a frame that the listening model was trained on; pure.

Figures: Kaldi's feature-mfcc as the model's conf/mfcc.conf sets it (25 ms povey window every 10 ms,
pre-emphasis 0.97, 40 mel bins from 20 to 7600 Hz, lifter 22, no energy, edges snipped).
"""

from __future__ import annotations

from functools import cache
from typing import Any

import numpy as np
from numpy.typing import NDArray

RATE_HZ = 16_000
WINDOW, SHIFT, FFT, BINS = 400, 160, 512, 40
LOW_HZ, HIGH_HZ = 20.0, 7_600.0
FLOOR = 1.1920928955078125e-07
"""Kaldi's least energy of a bin."""

Floats = NDArray[np.float32]


def mfcc(sound: NDArray[np.int16]) -> Floats:
    """float32 [frames, 40] of int16 [n] at 16 kHz; frames = 1 + (n - 400) // 160, none below 400.

    A noise of one step, always the same, stands for the recogniser's dither: digital silence has
    no logarithm.
    """
    count = 1 + (len(sound) - WINDOW) // SHIFT if len(sound) >= WINDOW else 0
    if not count:
        return np.zeros((0, BINS), np.float32)
    places = np.arange(count)[:, None] * SHIFT + np.arange(WINDOW)
    frames = sound.astype(np.float32)[places] + _dither()
    frames -= frames.mean(1, keepdims=True)
    before = np.concatenate([frames[:, :1], frames[:, :-1]], 1)
    frames = (frames - np.float32(0.97) * before) * _window()
    power = np.abs(np.fft.rfft(frames, FFT)) ** 2
    energies = np.log(np.maximum(power @ _banks().T, FLOOR))
    return np.asarray(energies @ _cosines().T, np.float32)


@cache
def _dither() -> Floats:
    return np.random.default_rng(1).standard_normal(WINDOW).astype(np.float32)


@cache
def _window() -> Floats:
    wave = 0.5 - 0.5 * np.cos(2 * np.pi * np.arange(WINDOW) / (WINDOW - 1))
    return np.asarray(wave**0.85, np.float32)


def _mel(hz: NDArray[np.floating[Any]]) -> NDArray[np.float64]:
    return np.asarray(1127.0 * np.log(1.0 + hz / 700.0), np.float64)


@cache
def _banks() -> NDArray[np.float64]:
    low, high = _mel(np.array([LOW_HZ, HIGH_HZ]))
    step = (high - low) / (BINS + 1)
    left = (low + step * np.arange(BINS))[:, None]
    mel = _mel(RATE_HZ / FFT * np.arange(FFT // 2))[None]
    slopes = np.minimum((mel - left) / step, (left + 2 * step - mel) / step)
    return np.pad(np.maximum(slopes, 0.0), ((0, 0), (0, 1)))


@cache
def _cosines() -> NDArray[np.float64]:
    k = np.arange(BINS)
    cosines = np.cos(np.pi / BINS * (k[None] + 0.5) * k[:, None]) * np.sqrt(2.0 / BINS)
    cosines[0] *= np.sqrt(0.5)
    return np.asarray(cosines * (1.0 + 11.0 * np.sin(np.pi * k / 22.0))[:, None])
