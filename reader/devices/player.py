"""Player: one stream to the speaker, open all the time, that plays what the mixer holds."""

from __future__ import annotations

import contextlib
import threading
import time
from collections.abc import Callable
from typing import Any

from reader.devices.mixer import Mixer
from reader.devices.ports import RATE_HZ, DeviceBack, DeviceLost, DeviceUnavailable, Push

SILENT_S = 1.0
"""No callback for this long: the speaker is gone. A healthy stream calls every 10 to 20 ms."""

LOOK_S = 0.25
"""How often the watcher looks: judgement."""

NO_SPEAKER = (
    "There is no speaker, so nothing can be spoken and the words are shown only; "
    "plug one in or choose one in your system's sound settings."
)


class Player:
    """Opens the speaker, watches it, and opens it again when it was lost.

    push gets DeviceLost("speaker", ...) and DeviceBack("speaker") once each time. changed is called
    with False and True at the same moments, so that the voice can end what nobody hears.
    """

    def __init__(self, mixer: Mixer, push: Push, device: str | int | None = None) -> None:
        self._mixer, self._push, self._device = mixer, push, device
        self._stream: Any = None
        self._last_call_s = 0.0
        self._closing = threading.Event()
        self._watcher: threading.Thread | None = None
        self.lost = False
        self.changed: Callable[[bool], None] = lambda there: None

    def open(self) -> None:
        """Opens the speaker; raises DeviceUnavailable with one sentence, and opens it later when
        it comes.
        """
        trouble: Exception | None = None
        try:
            self._open_stream()
        except Exception as error:  # PortAudio's errors and a missing PortAudio alike
            trouble, self.lost = error, True
        if self._watcher is None:
            self._watcher = threading.Thread(target=self._watch, daemon=True, name="speaker watch")
            self._watcher.start()
        if trouble is not None:
            raise DeviceUnavailable(NO_SPEAKER) from trouble

    def close(self) -> None:
        """Gives the speaker back; harmless twice."""
        self._closing.set()
        if self._watcher is not None:
            self._watcher.join(3.0)
        self._close_stream()

    def latency_s(self) -> float:
        """Seconds from the mixer to the air, as the stream reckons; 0 without one."""
        stream = self._stream
        return float(stream.latency) if stream is not None else 0.0

    def declare_lost(self, sentence: str = NO_SPEAKER) -> None:
        """Someone else has found the speaker gone."""
        if not self.lost:
            self.lost = True
            self.changed(False)
            self._push(DeviceLost("speaker", sentence))

    def declare_back(self) -> None:
        """The speaker is heard again."""
        if self.lost:
            self.lost = False
            self._push(DeviceBack("speaker"))
            self.changed(True)

    def _open_stream(self) -> None:
        import sounddevice

        self._last_call_s = time.monotonic()
        stream = sounddevice.OutputStream(
            samplerate=RATE_HZ,
            channels=1,
            dtype="int16",
            latency="low",
            device=self._device,
            callback=self._fill,
        )
        stream.start()
        self._stream = stream

    def _fill(self, out: Any, length: int, times: Any, status: Any) -> None:
        now_s = time.monotonic()
        self._last_call_s = now_s
        out[:, 0] = self._mixer.pull(length, now_s)

    def _close_stream(self) -> None:
        stream, self._stream = self._stream, None
        if stream is not None:
            with contextlib.suppress(Exception):
                stream.abort()
            with contextlib.suppress(Exception):
                stream.close()

    def _watch(self) -> None:
        while not self._closing.wait(LOOK_S):
            late = time.monotonic() - self._last_call_s > SILENT_S
            if self._stream is not None and late:
                self._close_stream()
                self.declare_lost()
            elif self._stream is None:
                # A missing library or server may come back at any time; a look costs little.
                with contextlib.suppress(Exception):
                    self._open_stream()
                    self.declare_back()
                if self._stream is None:
                    self._closing.wait(SILENT_S)
