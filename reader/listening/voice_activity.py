"""Sound level against the room's own: whether somebody may be speaking (pure)."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

ABOVE_DB = 9.0
"""Decibels over the room's floor that may be speech (our choice)."""
BLOCK = 1_600
"""Samples judged at a time: 0.1 s."""


class Level:
    """Follows the floor of the room and says whether a block stands above it."""

    def __init__(self) -> None:
        self.floor_db = 30.0

    def above(self, samples: NDArray[np.int16]) -> bool:
        """Whether this block stands above the floor, which slowly follows."""
        if not len(samples):
            return False
        power = float(np.mean(samples.astype(np.float64) ** 2))
        level = 10 * np.log10(power + 1.0)
        up = bool(level > self.floor_db + ABOVE_DB)
        step = 0.02 if level > self.floor_db else 0.5
        self.floor_db += step * (level - self.floor_db)
        return up
