"""Sample ear: clean frames in; the room, single utterances or understood phrases out."""

from __future__ import annotations

import threading

import numpy as np

from reader.devices.ear import ThreadedEar
from reader.devices.ports import (
    FRAME,
    RATE_HZ,
    Push,
    Recogniser,
    RoomHeard,
    SampleHeard,
    Samples,
)
from reader.listening.utterance import Utterance

GUARD = 15
"""Frames left out when a sample begins, so that our own chime is none: 0.3 s."""
NOBODY = 400
"""Frames after which nobody has spoken: 8 s. Judgement."""


class SampleEars(ThreadedEar):
    """Keeps the SampleEar port; `take` is the consumer of the hearing's frames."""

    def __init__(self, recogniser: Recogniser, push: Push) -> None:
        self._lock = threading.Lock()
        self._room: list[Samples] | None = None
        self._room_frames = self._waited = 0
        self._utterance: Utterance | None = None
        self._tell = push
        super().__init__(recogniser, push)

    def measure(self, seconds: float) -> None:
        """Listens to the room for so long."""
        with self._lock:
            self._utterance = None
            self._room, self._room_frames = [], round(seconds * RATE_HZ / FRAME)

    def sample(self, room_db: float) -> None:
        """Takes the next utterance that stands above this level of the room."""
        with self._lock:
            self._room, self._waited = None, -GUARD
            self._utterance = Utterance(room_db)

    def idle(self) -> None:
        """Takes nothing more."""
        with self._lock:
            self._room = self._utterance = None

    def take(self, frame: Samples, first_sample: int, at_s: float) -> None:
        """Takes one frame of sound."""
        with self._lock:
            event = self._taken(frame)
            taking = event is not None or self._room is not None or self._utterance is not None
        if event is not None:
            self._tell(event)
        if not taking:
            super().take(frame, first_sample, at_s)

    def _taken(self, frame: Samples) -> RoomHeard | SampleHeard | None:
        if self._room is not None:
            self._room.append(frame)
            if len(self._room) < self._room_frames:
                return None
            room, self._room = np.concatenate(self._room), None
            return RoomHeard(room)
        if self._utterance is None:
            return None
        self._waited += 1
        said = self._utterance.feed(frame) if self._waited > 0 else None
        if said is None and (self._utterance.begun or self._waited < NOBODY):
            return None
        self._utterance = None
        return SampleHeard(said)
