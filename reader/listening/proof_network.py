"""The proof's network in numpy: a few seconds of sound in, phones every 20 ms out; pure.

It is the encoder of a small Whisper, trained further to write phones (see the card); four layers
in which every moment looks at every other.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import numpy as np
from numpy.typing import NDArray

from reader.listening.log_mel import Floats, log_mel

HEADS, LAYERS = 6, 4
EPSILON = 1e-5
FRAME_S = 0.02
"""Seconds from one row of scores to the next."""
SHORTEST = 1_600
"""Samples below which a sound holds nothing: 0.1 s."""
_STEEP = np.float32(np.sqrt(2 / np.pi))


class ProofNetwork:
    """weights: as the recipe writes them, by name; KeyError without places for the moments."""

    def __init__(self, weights: Mapping[str, NDArray[Any]]) -> None:
        held = {name: _plain(weights, name) for name in weights if not name.endswith(".scale")}
        # Matrices stand transposed, so that each product runs along memory.
        self._held = {
            name: array.T.copy() if array.ndim == 2 and name != "places" else array
            for name, array in held.items()
        }
        self.longest = len(held["places"])

    def scores(self, sound: NDArray[np.int16]) -> Floats:
        """Log probabilities [n, 40] of a sound at 16 kHz; the last seconds of one that is too long,
        no rows for one that is too short."""
        if len(sound) < SHORTEST:
            return np.zeros((0, 40), np.float32)
        x = log_mel(sound[-self.longest * 320 :]).T
        x = _bend(self._conv("conv2", _bend(self._conv("conv1", x, 1)), 2))
        x = x + self._held["places"][: len(x)]
        for number in range(LAYERS):
            x = self._layer(f"layers.{number}.", x)
        x = self._last("head", self._norm("norm", x))
        x = x - x.max(1, keepdims=True)
        return np.asarray(x - np.log(np.exp(x).sum(1, keepdims=True)), np.float32)

    def _last(self, name: str, x: Floats) -> Floats:
        return np.asarray(x @ self._held[name + ".weight"] + self._held[name + ".bias"])

    def _norm(self, name: str, x: Floats) -> Floats:
        x = x - x.mean(1, keepdims=True)
        x = x / np.sqrt((x * x).mean(1, keepdims=True) + np.float32(EPSILON))
        return np.asarray(x * self._held[name + ".weight"] + self._held[name + ".bias"])

    def _conv(self, name: str, x: Floats, stride: int) -> Floats:
        """Three moments around each, every stride-th."""
        weight = self._held[name + ".weight"]
        around = np.pad(x, ((1, 1), (0, 0)))
        count = (len(x) - 1) // stride + 1
        taps = [around[tap : tap + stride * count : stride][:count] for tap in range(3)]
        out = sum(tap @ weight[:, :, n].T for n, tap in enumerate(taps))
        return np.asarray(out + self._held[name + ".bias"])

    def _layer(self, own: str, x: Floats) -> Floats:
        joined = self._last(own + "look", self._norm(own + "look_norm", x))
        parts = joined.reshape(len(x), 3, HEADS, -1).transpose(1, 2, 0, 3)
        alike = parts[0] @ parts[1].transpose(0, 2, 1) / np.float32(np.sqrt(parts.shape[-1]))
        alike = np.exp(alike - alike.max(-1, keepdims=True))
        seen = alike / alike.sum(-1, keepdims=True) @ parts[2]
        x = x + self._last(own + "looked", seen.transpose(1, 0, 2).reshape(len(x), -1))
        wide = _bend(self._last(own + "wide", self._norm(own + "feed_norm", x)))
        return np.asarray(x + self._last(own + "narrow", wide))


def _plain(weights: Mapping[str, NDArray[Any]], name: str) -> Floats:
    """A matrix of whole numbers and the scale of its rows as one of floats."""
    array = np.asarray(weights[name], np.float32)
    if name + ".scale" not in weights:
        return array
    scale = np.asarray(weights[name + ".scale"], np.float32)
    return np.asarray(array * scale.reshape(-1, *[1] * (array.ndim - 1)))


def _bend(x: Floats) -> Floats:
    """GELU, by the error function's usual stand-in (off by 5e-4 at most)."""
    inner = np.tanh(_STEEP * (x + np.float32(0.044715) * x * x * x))
    return np.asarray(np.float32(0.5) * x * (1 + inner))
