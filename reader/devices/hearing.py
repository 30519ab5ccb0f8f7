"""Hearing: microphone, canceller and watch over both; gives clean frames on its own thread."""

from __future__ import annotations

import contextlib
import queue
import threading
from collections.abc import Callable

from reader.devices.echo import Canceller, open_canceller
from reader.devices.echo_line import EchoLine
from reader.devices.microphone import Microphone
from reader.devices.ports import RATE_HZ, Push, Samples
from reader.devices.sound_ring import SoundRing
from reader.devices.stream_place import StreamPlace

WAITING = 250
"""Frames that may wait, five seconds: a consumer that is slower loses sound. Judgement."""

KEPT_S = 60
"""Seconds of clean sound kept for notes by voice: one minute, 2 MB. Judgement."""

CleanConsumer = Callable[[Samples, int, float], None]
"""Takes int16[320] without our own voice, the number of its first sample, and when it came."""


class Hearing:
    """What the ear is fed by.

    played: the mixer's ring of what went to the speaker. notice: a sentence to say once when there
    is no canceller, else "". lost_frames: how many the consumer was too slow for.
    """

    def __init__(
        self,
        consumer: CleanConsumer,
        push: Push,
        played: SoundRing,
        device: str | int | None = None,
        canceller: Canceller | None = None,
    ) -> None:
        self._consumer = consumer
        self._canceller, self.notice = (canceller, "") if canceller else open_canceller()
        self._line = EchoLine(self._canceller, played)
        self._frames: queue.Queue[tuple[Samples, int, float] | None] = queue.Queue(WAITING)
        self._recent = SoundRing(KEPT_S)
        self._anew = threading.Event()
        self.lost_frames = 0
        self.microphone = Microphone(self._take, push, device)
        self.microphone.changed = lambda there: self._anew.set()
        self._place = StreamPlace(self.microphone.moved_away)
        self._thread = threading.Thread(target=self._work, daemon=True, name="hearing")

    def open(self) -> None:
        """Begins to hear; raises DeviceUnavailable with one sentence, and begins once it can."""
        self._thread.start()
        try:
            self.microphone.open()
        finally:
            self._place.start()

    def close(self) -> None:
        """Gives everything back; harmless twice."""
        self._place.close()
        self.microphone.close()
        with contextlib.suppress(queue.Full):
            self._frames.put(None, timeout=1.0)
        if self._thread.is_alive():
            self._thread.join(2.0)
        if not self._thread.is_alive():
            self._canceller.close()

    def somebody(self) -> bool:
        """Whether somebody other than the program just spoke; False where it cannot be told."""
        return self._line.somebody()

    def recent(self, seconds: float) -> Samples:
        """The last seconds of clean sound, 60 at most: what a note by voice is kept from."""
        length = min(round(seconds * RATE_HZ), KEPT_S * RATE_HZ, self._recent.written())
        return self._recent.read(self._recent.written() - length, length)

    def _take(self, frame: Samples, first: int, at_s: float) -> None:
        try:
            self._frames.put_nowait((frame, first, at_s))
        except queue.Full:
            self.lost_frames += 1

    def _work(self) -> None:
        while (taken := self._frames.get()) is not None:
            if self._anew.is_set():
                self._anew.clear()
                self._line.restart()
            frame, first, at_s = taken
            clean = self._line.clean(frame, first, at_s)
            self._recent.write(clean, at_s)
            self._consumer(clean, first, at_s)
