"""One utterance cut out of a stream of frames by its level above the room's; pure."""

from __future__ import annotations

from collections import deque

import numpy as np
from numpy.typing import NDArray

ABOVE_DB = 9.0
"""Decibels above the room that are somebody speaking; as the live ear judges it."""
BEGINS, ENDS, LONGEST, BEFORE = 3, 22, 200, 12
"""Frames of 20 ms: loud ones that begin an utterance, quiet ones that end it, the longest, and what
is kept from before its beginning. Judgement.
"""
LOUD = 5
"""Loud frames below which it was a knock (our choice): 0.1 s."""
QUIETEST_DB = -70.0
"""A floor below this is taken for this, so that a microphone's hiss is no speech."""

Sound = NDArray[np.int16]


class Utterance:
    """Waits for somebody to speak. floor_db: the room's level, 0 the loudest there can be."""

    def __init__(self, floor_db: float) -> None:
        self._least_db = max(floor_db, QUIETEST_DB) + ABOVE_DB
        self._before: deque[Sound] = deque(maxlen=BEFORE)
        self._frames: list[Sound] = []
        self._loud = self._quiet = 0

    @property
    def begun(self) -> bool:
        """Whether somebody is speaking."""
        return bool(self._frames)

    def feed(self, frame: Sound) -> Sound | None:
        """The whole utterance when it has just ended, with a little quiet around it; else None."""
        power = float(np.mean(frame.astype(np.float64) ** 2)) / 32_768**2
        loud = 10 * np.log10(power + 1e-12) > self._least_db
        if not self._frames:
            self._before.append(frame)
            self._loud = self._loud + 1 if loud else 0
            if self._loud >= BEGINS:
                self._frames, self._quiet = list(self._before), 0
            return None
        self._frames.append(frame)
        self._loud, self._quiet = self._loud + loud, 0 if loud else self._quiet + 1
        if self._quiet < ENDS and len(self._frames) < LONGEST:
            return None
        said, knock = np.concatenate(self._frames), self._loud < LOUD
        self._frames, self._loud = [], 0
        self._before.clear()
        return None if knock else said
