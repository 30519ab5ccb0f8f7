"""How likely it is that words are written to a sound, by the second half of a small Whisper; pure.

Text is written in pieces, mostly whole words; each piece looks at those before it and at the
moments of the sound. Which pieces a word has stands beside the weights (see the recipe).
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from reader.listening.few_bits import Floats
from reader.listening.layers import Layers, log_shares, look

LAYERS = 4
START, NO_TIMES = 0, 1
"""The pieces that every text begins with."""
Pieces = tuple[int, ...]


class WordsNetwork:
    """parts: those of the file, of which these begin with "words."; KeyError without places."""

    def __init__(self, parts: Layers) -> None:
        self._parts = parts
        self._pieces, self._places = (parts.held[f"words.{one}"] for one in ("pieces", "places"))
        self.longest = len(self._places) - 1

    def likely(self, moments: Floats, texts: Sequence[Pieces]) -> Floats:
        """Log probability of each text, or of one that begins so.

        moments: [n, 384], n at least 1. texts: of 1 to `longest` pieces each, at least one.
        """
        most = max(map(len, texts))
        comes = np.array([[*one, *[0] * (most - len(one))] for one in texts])
        begins = np.full((len(texts), 2), (START, NO_TIMES))
        x = self._deep(moments, np.concatenate([begins, comes[:, :-1]], 1))[:, 1:]
        next_ = log_shares(x.reshape(-1, x.shape[-1]) @ self._pieces.T)
        scores = next_[np.arange(comes.size), comes.ravel()].reshape(comes.shape)
        told = np.arange(most) < np.array([len(one) for one in texts])[:, None]
        return np.asarray((scores * told).sum(1), np.float32)

    def _deep(self, moments: Floats, text: np.ndarray) -> Floats:
        """Pieces [texts, n] -> what the next ones are read from, [texts, n, 384]."""
        parts, x = self._parts, self._pieces[text] + self._places[: text.shape[1]]
        for number in range(LAYERS):
            own = f"words.layers.{number}."
            x = parts.looked(own, x, "own_norm", past=True)
            k, v = np.split(parts.line(own + "sound", moments), 2, -1)
            asked = parts.line(own + "ask", parts.norm(own + "sound_norm", x))
            x = x + parts.line(own + "answered", look(asked, k, v))
            x = parts.fed(own, x)
        return parts.norm("words.norm", x)
