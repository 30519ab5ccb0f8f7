"""Troubles: what is missing at the start is told once, and not into the first words."""

from __future__ import annotations

import threading

from reader.devices.ports import DeviceLost, Push, SpeechEnded


class Troubles:
    """Stands between the devices and the loop: `push` passes every event on. What was given to
    `add` follows the first words heard to their end, one trouble behind each text, so that none
    breaks into another.

    Where nothing can be heard every text ends unheard: `unheard` says that this counts as an end.
    Where there is no voice at all, `at_once` says that there is no end to wait for.
    """

    def __init__(self, push: Push) -> None:
        self._push = push
        self._lock = threading.Lock()
        self._waiting: list[DeviceLost] = []
        self._at_once = self._unheard = False

    def add(self, trouble: DeviceLost) -> None:
        """Tells it as soon as it cuts nothing off."""
        with self._lock:
            if not self._at_once:
                self._waiting.append(trouble)
                return
        self._push(trouble)

    def unheard(self) -> None:
        """Texts that end unheard are ends too."""
        self._unheard = True

    def at_once(self) -> None:
        """From now on nothing waits."""
        with self._lock:
            self._at_once = True
            waiting, self._waiting = self._waiting, []
        for trouble in waiting:
            self._push(trouble)

    def push(self, event: object) -> None:
        """An event of a device; a voice that is not there is no reason to break into words."""
        if isinstance(event, DeviceLost) and event.device == "chosen voice":
            self.add(event)
            return
        self._push(event)
        if isinstance(event, SpeechEnded) and (event.complete or self._unheard):
            with self._lock:
                next_one = self._waiting.pop(0) if self._waiting else None
            if next_one is not None:
                self._push(next_one)
