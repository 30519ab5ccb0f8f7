"""The proof's network in numpy: a few seconds of sound in, phones every 20 ms out; pure.

It is the encoder of a small Whisper, trained further to write phones (see the card); four layers
in which every moment looks at every other. What its last layer makes of the sound is read as words
too, see words_network.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import numpy as np
from numpy.typing import NDArray

from reader.listening.few_bits import Floats, matrices
from reader.listening.layers import Layers, bend, log_shares
from reader.listening.log_mel import log_mel
from reader.listening.words_network import WordsNetwork

LAYERS = 4
FRAME_S = 0.02
"""Seconds from one row of scores to the next."""
SHORTEST = 1_600
"""Samples below which a sound holds nothing: 0.1 s."""


class ProofNetwork:
    """weights: as the recipe writes them, by name; KeyError without places for the moments."""

    def __init__(self, weights: Mapping[str, NDArray[Any]]) -> None:
        self._parts = Layers(matrices(weights))
        self._places = self._parts.held["sound.places"]
        self.words = WordsNetwork(self._parts)
        self.longest = len(self._places)

    def moments(self, sound: NDArray[np.int16]) -> Floats:
        """What is read from a sound at 16 kHz: [n, 384]; the last seconds of one that is too long,
        no rows for one that is too short."""
        if len(sound) < SHORTEST:
            return np.zeros((0, self._places.shape[1]), np.float32)
        x = log_mel(sound[-self.longest * 320 :]).T
        x = bend(self._conv("sound.conv2", bend(self._conv("sound.conv1", x, 1)), 2))
        x = x + self._places[: len(x)]
        for number in range(LAYERS):
            own = f"sound.layers.{number}."
            x = self._parts.fed(own, self._parts.looked(own, x))
        return self._parts.norm("sound.norm", x)

    def phones(self, moments: Floats) -> Floats:
        """Log probabilities [n, 40] of the phones, 0 is blank."""
        return log_shares(self._parts.line("sound.head", moments))

    def _conv(self, name: str, x: Floats, stride: int) -> Floats:
        """Three moments around each, every stride-th."""
        weight = self._parts.held[name + ".weight"]
        around = np.pad(x, ((1, 1), (0, 0)))
        count = (len(x) - 1) // stride + 1
        taps = [around[tap : tap + stride * count : stride][:count] for tap in range(3)]
        out = sum(tap @ weight[:, :, n].T for n, tap in enumerate(taps))
        return np.asarray(out + self._parts.held[name + ".bias"])
