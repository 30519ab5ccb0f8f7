"""The ear's thread: who changes the phrases never waits, however far behind the ear is."""

from __future__ import annotations

import threading
import time

import numpy as np

from reader.devices.ear import WAITING, ThreadedEar
from reader.devices.ports import FRAME, Samples


class SlowRecogniser:
    """Stands still in its first frame until it is let go, and remembers what it was asked."""

    def __init__(self) -> None:
        self.go = threading.Event()
        self.frames = 0
        self.phrases: list[tuple[str, ...]] = []

    def listen_for(self, phrases: tuple[str, ...]) -> None:
        """Remembers them."""
        self.phrases.append(phrases)

    def feed(self, samples: Samples) -> tuple[object, ...]:
        """Waits to be let go."""
        self.go.wait(10.0)
        self.frames += 1
        return ()

    def flush(self) -> tuple[object, ...]:
        """Nothing."""
        return ()


def test_new_phrases_never_wait() -> None:
    """With more sound waiting than the ear takes, phrases still go in at once and in order."""
    slow = SlowRecogniser()
    ear = ThreadedEar(slow, lambda event: None)  # type: ignore[arg-type]
    for n in range(WAITING + 50):
        ear.take(np.zeros(FRAME, np.int16), n * FRAME, 0.0)
    asking = threading.Thread(target=lambda: ear.listen_for(("next",)), daemon=True)
    asking.start()
    asking.join(2.0)
    waited = asking.is_alive()
    slow.go.set()
    ear.listen_for(("again",))
    until = time.monotonic() + 5.0
    while len(slow.phrases) < 2 and time.monotonic() < until:
        time.sleep(0.01)
    ear.close()
    assert not waited
    assert slow.phrases == [("next",), ("again",)]
    assert WAITING <= slow.frames <= WAITING + 1
