"""Ear: clean frames in, what was heard out; a thread of its own, so that nothing waits for it."""

from __future__ import annotations

import queue
import re
import threading
from collections.abc import Callable

from reader.devices.ports import DeviceLost, Push, Recogniser, Samples
from reader.listening.heard import Heard
from reader.listening.own_ear import OwnEar

WAITING = 400
"""Frames that may wait: 8 s; beyond that the oldest sound is not worth hearing."""


class ThreadedEar:
    """Keeps the Ear port over a recogniser; `take` is the consumer of the hearing's frames."""

    def __init__(self, recogniser: Recogniser, push: Push) -> None:
        self._recogniser, self._push = recogniser, push
        self._just_said: Callable[[float], str] = lambda ago_s: self._masked
        self._somebody: Callable[[], bool] = lambda: False
        self._asked: queue.SimpleQueue[tuple[str, object]] = queue.SimpleQueue()
        self._masked = ""
        self._muted = False
        self._thread = threading.Thread(target=self._work, daemon=True, name="ear")
        self._thread.start()

    def know_own_voice(
        self, just_said: Callable[[float], str], somebody: Callable[[], bool]
    ) -> None:
        """From now on it is asked what the program has said since so many seconds ago, and whether
        somebody else spoke.

        A phrase that was just said is then taken for the program's own, unless somebody spoke.
        """
        self._just_said, self._somebody = just_said, somebody

    def take(self, frame: Samples, first_sample: int, at_s: float) -> None:
        """Takes one frame of sound; drops it when too many wait."""
        if self._asked.qsize() < WAITING:
            self._asked.put(("sound", frame))

    def listen_for(self, phrases: tuple[str, ...]) -> None:
        """From the sound to come on, these phrases; never waits, however much sound is behind."""
        self._asked.put(("phrases", phrases))

    def know(self, own: OwnEar) -> None:
        """From the sound to come on, the maker's samples are these."""
        self._asked.put(("own", own))

    def mask(self, words: str) -> None:
        """Phrases that stand in these words are being said by the program itself."""
        self._masked = words

    def mute(self, on: bool) -> None:
        """Hears nothing while on."""
        self._muted = on

    def close(self) -> None:
        """Ends the thread."""
        self._asked.put(("end", None))
        self._thread.join(2.0)

    def _work(self) -> None:
        while True:
            kind, what = self._asked.get()
            if kind == "end":
                return
            try:
                if kind == "phrases":
                    self._recogniser.listen_for(what)  # type: ignore[arg-type]
                elif kind == "own":
                    self._recogniser.know(what)  # type: ignore[arg-type]
                elif not self._muted:
                    self._heard(what)  # type: ignore[arg-type]
            except Exception as error:  # the keys must go on working whatever the recogniser does
                sentence = f"Listening has stopped ({error}); the keys go on working."
                self._push(DeviceLost("recogniser", sentence))
                return

    def _heard(self, frame: Samples) -> None:
        for one in self._recogniser.feed(frame):
            if not (isinstance(one, Heard) and self._ours(one)):
                self._push(one)

    def _ours(self, heard: Heard) -> bool:
        """Whether the program may just have heard itself."""
        if self._somebody():
            return False
        words = self._just_said(heard.decided_s - heard.said_at_s)
        plain = " ".join(re.findall(r"[a-z'-]+", words.lower()))
        return bool(heard.text) and f" {heard.text} " in f" {plain} "
