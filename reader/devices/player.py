"""Player: one stream to the speaker, open all the time, that plays what the mixer holds."""

from __future__ import annotations

import sys
from collections import deque
from typing import Any

from reader.devices.kept_stream import KeptStream, Kind
from reader.devices.mixer import Mixer
from reader.devices.ports import RATE_HZ, Push
from reader.devices.sound_system import look_for_devices

SPEAKER = Kind(
    "speaker",
    "There is no speaker, so nothing can be spoken and the words are shown only; "
    "plug one in or choose one in your system's sound settings.",
)

BLOCK = RATE_HZ // 100
"""10 ms, two of which wait in the speaker's buffer. With 5 ms what is stopped is silent sooner,
but on a busy machine the speech has three times as many gaps.
"""

LONGER_S = (0.06, 0.12)
"""Buffers taken one after the other on a machine too busy for the shortest: what is stopped sounds
on so much longer, but speech without gaps can be understood. Judgement.
"""

GAPS, GAPS_WITHIN_S = 3, 10.0
"""So many gaps in so many seconds are no accident. Judgement."""

TURN_S = 0.001
"""How long Python lets one thread compute while another waits. Its usual 5 ms, with four threads
busy, kept the sound thread waiting 50 ms and tore gaps into the speech; with 1 ms it waited 12 ms.
"""


class Player(KeptStream):
    """Opens the speaker, watches it, and opens it again when it was lost.

    device: a sounddevice name or number, None for the system's choice.
    """

    def __init__(self, mixer: Mixer, push: Push, device: str | int | None = None) -> None:
        super().__init__(SPEAKER, self._stream_to_speaker, push)
        self._mixer, self._device = mixer, device
        self._gaps: deque[float] = deque(maxlen=GAPS)
        self._longer = list(LONGER_S)
        self._buffer_s: float | str = "low"

    def _stream_to_speaker(self) -> Any:
        import sounddevice

        sys.setswitchinterval(min(TURN_S, sys.getswitchinterval()))
        look_for_devices()
        stream = sounddevice.OutputStream(
            samplerate=RATE_HZ,
            channels=1,
            dtype="int16",
            blocksize=BLOCK,
            latency=self._buffer_s,
            device=self._device,
            callback=self._fill,
        )
        stream.start()
        return stream

    def _fill(self, out: Any, length: int, times: Any, status: Any) -> None:
        now_s = self.alive()
        if status and status.output_underflow:
            self._gaps.append(now_s)
        out[:, 0] = self._mixer.pull(length, now_s)

    def _should_begin_anew(self) -> bool:
        """After too many gaps a longer buffer is taken, while nothing is being said."""
        often = len(self._gaps) == GAPS and self._gaps[-1] - self._gaps[0] < GAPS_WITHIN_S
        if not (often and self._longer and self._mixer.quiet()):
            return False
        self._gaps.clear()
        self._buffer_s = self._longer.pop(0)
        return True
