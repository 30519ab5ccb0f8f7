"""Troubles: what is missing at the start is told once, and not into the first words."""

from __future__ import annotations

import threading

from reader.devices.ports import DeviceLost, Push, SpeechEnded


class Troubles:
    """Stands between the devices and the loop: `push` passes every event on, and what was given to
    `add` follows the first words that were heard to their end.

    Where nothing can be heard there is no speech to wait for: `at_once` says so.
    """

    def __init__(self, push: Push) -> None:
        self._push = push
        self._lock = threading.Lock()
        self._waiting: list[DeviceLost] = []
        self._at_once = False

    def add(self, trouble: DeviceLost) -> None:
        """Tells it as soon as it does not cut off the first words."""
        with self._lock:
            if not self._at_once:
                self._waiting.append(trouble)
                return
        self._push(trouble)

    def at_once(self) -> None:
        """From now on nothing waits."""
        with self._lock:
            self._at_once = True
            waiting, self._waiting = self._waiting, []
        for trouble in waiting:
            self._push(trouble)

    def push(self, event: object) -> None:
        """An event of a device."""
        self._push(event)
        if isinstance(event, SpeechEnded) and event.complete:
            self.at_once()
