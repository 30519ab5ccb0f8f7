"""The parts of a network in which everything looks at everything, by their names in a file; pure.

Source: Vaswani et al., "Attention Is All You Need" (2017), in the form that Whisper has.
"""

from __future__ import annotations

from collections.abc import Mapping

import numpy as np

from reader.listening.few_bits import Floats

HEADS = 6
EPSILON = 1e-5
_STEEP = np.float32(np.sqrt(2 / np.pi))
_NEVER = np.float32(-1e9)


class Layers:
    """held: arrays by name; a part that is missing is a KeyError when it is asked for."""

    def __init__(self, held: Mapping[str, Floats]) -> None:
        self.held = held

    def line(self, name: str, x: Floats) -> Floats:
        """[..., n] -> [..., m]."""
        weight, bias = self.held[name + ".weight"], self.held[name + ".bias"]
        # All rows in one product: several small ones would read the matrix as often.
        out = x.reshape(-1, x.shape[-1]) @ weight.T + bias
        return np.asarray(out.reshape(*x.shape[:-1], -1))

    def norm(self, name: str, x: Floats) -> Floats:
        """Each row with mean 0 and spread 1, then as the part wants it."""
        x = x - x.mean(-1, keepdims=True)
        x = x / np.sqrt((x * x).mean(-1, keepdims=True) + np.float32(EPSILON))
        return np.asarray(x * self.held[name + ".weight"] + self.held[name + ".bias"])

    def looked(self, own: str, x: Floats, norm: str = "look_norm", past: bool = False) -> Floats:
        """[..., n, width] after its rows looked at each other; past: at none behind themselves."""
        q, k, v = np.split(self.line(own + "look", self.norm(own + norm, x)), 3, -1)
        return x + self.line(own + "looked", look(q, k, v, past))

    def fed(self, own: str, x: Floats) -> Floats:
        """The same after its small network of each row."""
        wide = bend(self.line(own + "wide", self.norm(own + "feed_norm", x)))
        return x + self.line(own + "narrow", wide)


def look(q: Floats, k: Floats, v: Floats, past: bool = False) -> Floats:
    """What each row of q [..., n, width] takes from v [..., m, width], by how alike q and k are."""
    parts = [np.moveaxis(one.reshape(*one.shape[:-1], HEADS, -1), -2, -3) for one in (q, k, v)]
    alike = parts[0] @ parts[1].swapaxes(-1, -2) / np.float32(np.sqrt(parts[0].shape[-1]))
    if past:
        alike = alike + np.triu(np.full(alike.shape[-2:], _NEVER), 1)
    alike = np.exp(alike - alike.max(-1, keepdims=True))
    seen = alike / alike.sum(-1, keepdims=True) @ parts[2]
    return np.asarray(np.moveaxis(seen, -3, -2).reshape(q.shape), np.float32)


def bend(x: Floats) -> Floats:
    """GELU, by the error function's usual stand-in (off by 5e-4 at most)."""
    inner = np.tanh(_STEEP * (x + np.float32(0.044715) * x * x * x))
    return np.asarray(np.float32(0.5) * x * (1 + inner))


def log_shares(x: Floats) -> Floats:
    """Scores -> log probabilities along the last axis."""
    x = x - x.max(-1, keepdims=True)
    return np.asarray(x - np.log(np.exp(x).sum(-1, keepdims=True)), np.float32)
