"""How like a maker's own samples an utterance is: frames laid along each sample; pure.

Each sample is laid over the utterance wherever it fits best, at half to twice its pace (dynamic
time warping; Sakoe and Chiba 1978, slope between 1/2 and 2), so that talk around it does no harm
by itself; how much was said around it is counted apart.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from reader.listening.acoustics import Floats
from reader.listening.trace import Trace

SHORTEST = 6
"""Frames below which nothing is compared: 0.18 s."""
AROUND_COSTS = 0.02
"""Distance for speech around the word: so much for each factor e of (1 + frames of it)."""
FAR = np.float32(1e6)


@dataclass(frozen=True, slots=True)
class Match:
    """The phrase whose sample is nearest, and how far: 0 the same to 1 nothing in common, speech
    around it counted in. second: how far the nearest sample of any other phrase is. start, end:
    frames of the utterance. bare: how far, whatever was said around it.
    """

    phrase: str
    far: float
    second: float
    start: int
    end: int
    bare: float = 0.0


def around_costs(heard: Trace, *parts: tuple[int, int]) -> float:
    """The price of the speech outside these parts, from frame to frame."""
    around = float(heard.speaking.sum())
    around -= sum(float(heard.speaking[max(0, a - 1) : b + 1].sum()) for a, b in parts)
    return AROUND_COSTS * float(np.log1p(max(around, 0.0)))


class Samples:
    """The traces of samples by the phrase they stand for, laid side by side for comparing."""

    def __init__(self, traces: Mapping[str, Sequence[Trace]]) -> None:
        listed = [(phrase, one) for phrase, all_ in traces.items() for one in all_ if len(one) > 1]
        self.phrases = tuple(dict.fromkeys(phrase for phrase, _ in listed))
        self._phrase = [phrase for phrase, _ in listed]
        self._lengths = np.array([len(one) for _, one in listed], np.int64)
        longest = int(self._lengths.max()) if listed else 0
        self._shapes = np.zeros((len(listed), longest, 0), np.float32)
        if listed:
            width = listed[0][1].shape.shape[1]
            self._shapes = np.zeros((len(listed), longest, width), np.float32)
            for spot, (_, one) in enumerate(listed):
                self._shapes[spot, : len(one)] = one.shape

    def match(self, heard: Trace, among: frozenset[str]) -> Match | None:
        """The nearest sample of these phrases; None without samples, or for too short a sound."""
        chosen = [spot for spot, phrase in enumerate(self._phrase) if phrase in among]
        if not chosen or len(heard) < SHORTEST:
            return None
        costs = 1 - self._shapes[chosen] @ heard.shape.T
        far, start, end = _laid(costs, self._lengths[chosen])
        best = int(far.argmin())
        phrase = self._phrase[chosen[best]]
        others = [far[n] for n, spot in enumerate(chosen) if self._phrase[spot] != phrase]
        first, last = int(start[best]), int(end[best])
        price, bare = around_costs(heard, (first, last)), float(far[best])
        second = float(min(others, default=FAR)) + price
        return Match(phrase, bare + price, second, first, last, bare)


Ints = NDArray[np.int64]


def _laid(costs: Floats, lengths: Ints) -> tuple[Floats, Ints, Ints]:
    """For each sample its mean cost a frame where it lies best, and from where to where.

    costs: [samples, longest, frames]; lengths: each sample's own.
    """
    many, longest, frames = costs.shape
    far = np.full(many, FAR, np.float32)
    first, last = np.zeros(many, np.int64), np.zeros(many, np.int64)
    none = np.full((many, frames), FAR, np.float32)
    before, now = none, costs[:, 0].astype(np.float32)
    begun_before = begun = np.broadcast_to(np.arange(frames), (many, frames)).copy()
    for row in range(longest):
        if row:
            ways, starts = _ways(costs, row, before, now, begun_before, begun)
            way = ways.argmin(0)[None]
            before, begun_before = now, begun
            now = np.take_along_axis(ways, way, 0)[0]
            begun = np.take_along_axis(starts, way, 0)[0]
        for one in np.flatnonzero(lengths == row + 1):
            last[one] = int(now[one].argmin())
            far[one] = now[one, last[one]] / lengths[one]
            first[one] = begun[one, last[one]]
    return far, first, last + 1


def _ways(
    costs: Floats, row: int, before: Floats, now: Floats, begun_before: Ints, begun: Ints
) -> tuple[Floats, Ints]:
    """The three ways into a row: in step, two of the sound for one, two of the sample for one."""
    here = costs[:, row]
    ways = np.full((3, *here.shape), FAR, np.float32)
    starts = np.zeros((3, *here.shape), np.int64)
    ways[0, :, 1:] = now[:, :-1] + here[:, 1:]
    starts[0, :, 1:] = begun[:, :-1]
    ways[1, :, 2:] = now[:, :-2] + 0.5 * (here[:, 1:-1] + here[:, 2:])
    starts[1, :, 2:] = begun[:, :-2]
    if row >= 2:
        ways[2, :, 1:] = before[:, :-1] + costs[:, row - 1, 1:] + here[:, 1:]
        starts[2, :, 1:] = begun_before[:, :-1]
    return ways, starts
