"""Sound ring: the last seconds of a stream of samples, found by their numbers or by the clock."""

from __future__ import annotations

import threading

import numpy as np

from reader.devices.ports import RATE_HZ, Samples

KEPT_S = 8
"""Seconds kept: echo comes within one second, the delay is looked for in the last two.
Judgement.
"""


class SoundRing:
    """A ring of the last eight seconds; one thread writes, others read."""

    def __init__(self, seconds: int = KEPT_S) -> None:
        self._ring = np.zeros(seconds * RATE_HZ, np.int16)
        self._lock = threading.Lock()
        self._written = 0
        self._written_at_s = 0.0

    def write(self, samples: Samples, at_s: float) -> None:
        """Adds what was handed to the sound device at this second of the monotonic clock."""
        size = len(self._ring)
        with self._lock:
            kept = samples[-size:]
            start = (self._written + len(samples) - len(kept)) % size
            first = min(len(kept), size - start)
            self._ring[start : start + first] = kept[:first]
            self._ring[: len(kept) - first] = kept[first:]
            self._written += len(samples)
            self._written_at_s = at_s

    def written(self) -> int:
        """The number of samples handed over so far: the number of the next one."""
        with self._lock:
            return self._written

    def number_at(self, at_s: float) -> int:
        """The number of the sample that would be handed over at this second;
        between two blocks it is reckoned.
        """
        with self._lock:
            if self._written == 0:
                return 0
            # A stream that stands still must not be reckoned further and further ahead.
            passed_s = min(0.2, max(-1.0, at_s - self._written_at_s))
            return self._written + round(passed_s * RATE_HZ)

    def read(self, first: int, length: int) -> Samples:
        """int16[length] from sample number `first` on;
        silence where nothing was or is no longer kept.
        """
        out = np.zeros(length, np.int16)
        with self._lock:
            oldest = max(0, self._written - len(self._ring))
            start, stop = max(first, oldest), min(first + length, self._written)
            if stop > start:
                where = np.arange(start, stop) % len(self._ring)
                out[start - first : stop - first] = self._ring[where]
        return out
