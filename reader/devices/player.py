"""Player: one stream to the speaker, open all the time, that plays what the mixer holds."""

from __future__ import annotations

import sys
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

    def _stream_to_speaker(self) -> Any:
        import sounddevice

        sys.setswitchinterval(min(TURN_S, sys.getswitchinterval()))
        look_for_devices()
        stream = sounddevice.OutputStream(
            samplerate=RATE_HZ,
            channels=1,
            dtype="int16",
            blocksize=BLOCK,
            latency="low",
            device=self._device,
            callback=self._fill,
        )
        stream.start()
        return stream

    def _fill(self, out: Any, length: int, times: Any, status: Any) -> None:
        out[:, 0] = self._mixer.pull(length, self.alive())
