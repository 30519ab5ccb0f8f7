"""Tape: voice, chimes and microphone on files instead of devices, as fast as the machine can, in
their own time.

The rehearsal winds the tape on, 20 ms at a time: what the program plays is taken from its mixer,
what the maker says is laid in, and both sides are kept for one WAV.
"""

from __future__ import annotations

import wave
from collections.abc import Callable
from pathlib import Path

import numpy as np

from reader.devices.mixer import Mixer
from reader.devices.ports import FRAME, RATE_HZ, Samples

Consumer = Callable[[Samples, int, float], None]
"""Takes int16[320], the number of its first sample, and the second it was heard:
as the microphone gives.
"""


class Tape:
    """Both sides on one time line.

    consumer: the ear's side of the microphone, None for none. echo_db: how loud the speaker comes
    back in the microphone, None for not at all; echo_delay_s: how late.
    """

    def __init__(
        self,
        mixer: Mixer,
        consumer: Consumer | None = None,
        echo_db: float | None = None,
        echo_delay_s: float = 0.06,
    ) -> None:
        self._mixer, self._consumer = mixer, consumer
        self._echo = 0.0 if echo_db is None else 10 ** (echo_db / 20)
        self._echo_delay = round(echo_delay_s * RATE_HZ)
        self._maker = np.zeros(0, np.int16)
        self._program: list[Samples] = []
        self._microphone: list[Samples] = []
        self._frames = 0

    def now_s(self) -> float:
        """Seconds of tape so far."""
        return self._frames * FRAME / RATE_HZ

    def speak(self, sound: Samples) -> None:
        """The maker says this from now on, behind what is still being said."""
        self._maker = np.concatenate([self._maker, sound.astype(np.int16)])

    def maker_silent(self) -> bool:
        """Whether the maker has said everything."""
        return len(self._maker) == 0

    def wind(self, frames: int = 1) -> None:
        """Lets this many frames of 20 ms pass."""
        for _ in range(frames):
            self._frame()

    def save(self, path: Path) -> None:
        """One stereo WAV, 16 kHz: the maker on the left, the program on the right."""
        left = np.concatenate(self._microphone) if self._microphone else np.zeros(0, np.int16)
        right = np.concatenate(self._program) if self._program else np.zeros(0, np.int16)
        with wave.open(str(path), "wb") as out:
            out.setnchannels(2)
            out.setsampwidth(2)
            out.setframerate(RATE_HZ)
            out.writeframes(np.stack([left, right], axis=1).tobytes())

    def _frame(self) -> None:
        at_s = self.now_s()
        self._program.append(self._mixer.pull(FRAME, at_s))
        near = np.zeros(FRAME)
        taken, self._maker = self._maker[:FRAME], self._maker[FRAME:]
        near[: len(taken)] = taken
        if self._echo:
            first = self._frames * FRAME - self._echo_delay
            near += self._mixer.heard.read(first, FRAME) * self._echo
        frame = np.clip(near, -32768, 32767).astype(np.int16)
        self._microphone.append(frame)
        first_sample = self._frames * FRAME
        self._frames += 1
        if self._consumer is not None:
            self._consumer(frame, first_sample, at_s)
