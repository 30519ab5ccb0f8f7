"""Kept stream: a sound stream that is watched, given up when it is silent, and opened again by
itself.
"""

from __future__ import annotations

import contextlib
import threading
import time
from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from reader.devices.ports import DeviceBack, DeviceLost, DeviceUnavailable, Push

SILENT_S = 1.0
"""No callback for this long: the device is gone. A healthy stream calls every 10 to 20 ms."""

LOOK_S = 0.25
"""How often the watcher looks: judgement."""

TRY_AGAIN_S = 1.0
"""How often a lost device is tried: judgement."""


@dataclass(frozen=True, slots=True)
class Kind:
    """What the maker is told of a device:
    its name in events, and the sentence when it is missing.
    """

    name: str
    sentence: str


class KeptStream:
    """Opens a stream and keeps it open.

    make: opens and starts a stream, raises anything when it cannot. push gets DeviceLost and
    DeviceBack once each; `changed` is called with False and True at the same moments.
    The stream's callback must call `alive` each time.
    """

    def __init__(self, kind: Kind, make: Callable[[], Any], push: Push) -> None:
        self._kind, self._make, self._push = kind, make, push
        self._stream: Any = None
        self._last_call_s = 0.0
        self._closing = threading.Event()
        self._watcher: threading.Thread | None = None
        self._telling = threading.Lock()
        self._away = False
        self.lost = False
        self.changed: Callable[[bool], None] = lambda there: None

    def alive(self) -> float:
        """Notes that a callback came; gives its second of the monotonic clock."""
        self._last_call_s = time.monotonic()
        return self._last_call_s

    def open(self) -> None:
        """Opens the device; raises DeviceUnavailable with one sentence, and goes on trying."""
        trouble: Exception | None = None
        try:
            self._open_stream()
        except Exception as error:  # PortAudio's errors and a missing PortAudio alike
            trouble, self.lost = error, True
            self.changed(False)
        if self._watcher is None:
            name = f"{self._kind.name} watch"
            self._watcher = threading.Thread(target=self._watch, daemon=True, name=name)
            self._watcher.start()
        if trouble is not None:
            raise DeviceUnavailable(self._kind.sentence) from trouble

    def close(self) -> None:
        """Gives the device back; harmless twice."""
        self._closing.set()
        if self._watcher is not None:
            self._watcher.join(3.0)
        self._close_stream()

    def latency_s(self) -> float:
        """The stream's own reckoning of its buffers, 0 without one."""
        stream = self._stream
        return float(stream.latency) if stream is not None else 0.0

    def moved_away(self, away: bool) -> None:
        """The sound system has moved the running stream to a place that is of no use, or back."""
        self._away = away
        if away:
            self._tell_lost()
        elif self._stream is not None:
            self._tell_back()

    def _should_begin_anew(self) -> bool:
        """Whether the stream works but would work better if it were opened again."""
        return False

    def _open_stream(self) -> None:
        self.alive()
        self._stream = self._make()

    def _close_stream(self) -> None:
        stream, self._stream = self._stream, None
        if stream is not None:
            with contextlib.suppress(Exception):
                stream.abort()
            with contextlib.suppress(Exception):
                stream.close()

    def _watch(self) -> None:
        while not self._closing.wait(LOOK_S if self._stream is not None else TRY_AGAIN_S):
            if self._stream is None:
                # A missing library or server may come back at any time; a look costs little.
                with contextlib.suppress(Exception):
                    self._open_stream()
                if self._stream is not None and not self._away:
                    self._tell_back()
            elif time.monotonic() - self._last_call_s > SILENT_S:
                self._close_stream()
                self._tell_lost()
            elif self._should_begin_anew():
                self._close_stream()
                with contextlib.suppress(Exception):
                    self._open_stream()

    def _tell_lost(self) -> None:
        with self._telling:
            if self.lost:
                return
            self.lost = True
        self.changed(False)
        self._push(DeviceLost(self._kind.name, self._kind.sentence))

    def _tell_back(self) -> None:
        with self._telling:
            if not self.lost:
                return
            self.lost = False
        self.changed(True)
        self._push(DeviceBack(self._kind.name))
