"""Microphone: sound from the system's microphone, 20 ms at a time, with the numbers of its
samples.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import numpy as np

from reader.devices.kept_stream import KeptStream, Kind
from reader.devices.ports import FRAME, RATE_HZ, Push, Samples
from reader.devices.sound_system import look_for_devices

Consumer = Callable[[Samples, int, float], None]
"""Takes int16[320] of its own, the number of the first sample, and the second of the monotonic
clock when it came; called by the sound thread, so it must only put it into a queue."""

MICROPHONE = Kind(
    "microphone",
    "There is no microphone, so I cannot hear you; every command has a key as well, and I listen "
    "again as soon as one is plugged in.",
)


class Microphone(KeptStream):
    """Opens the microphone, watches it, and opens it again when it was lost.

    device: a sounddevice name or number, None for the system's choice. While the microphone is
    lost, or the sound system gives us the speaker's own sound in its place, nothing is consumed.
    """

    def __init__(self, consumer: Consumer, push: Push, device: str | int | None = None) -> None:
        super().__init__(MICROPHONE, self._stream_from_microphone, push)
        self._consumer, self._device = consumer, device
        self._samples = 0
        self._rest = np.zeros(0, np.int16)

    def samples(self) -> int:
        """How many samples have come so far."""
        return self._samples

    def _stream_from_microphone(self) -> Any:
        import sounddevice

        look_for_devices()
        stream = sounddevice.InputStream(
            samplerate=RATE_HZ,
            channels=1,
            dtype="int16",
            blocksize=FRAME,
            latency="low",
            device=self._device,
            callback=self._take,
        )
        stream.start()
        return stream

    def _take(self, sound: Any, length: int, times: Any, status: Any) -> None:
        at_s = self.alive()
        # Some systems give blocks of other lengths than were asked for.
        self._rest = np.concatenate([self._rest, sound[:, 0]])
        while len(self._rest) >= FRAME:
            frame, self._rest = self._rest[:FRAME].copy(), self._rest[FRAME:]
            first, self._samples = self._samples, self._samples + FRAME
            if not self.lost:
                self._consumer(frame, first, at_s)
