"""Echo line: microphone frames in, the same frames without our own voice out;
finds the delay by itself.
"""

from __future__ import annotations

import numpy as np

from reader.devices.echo import Canceller
from reader.devices.ports import FRAME, RATE_HZ, Samples
from reader.devices.sound_ring import SoundRing

LOOK_BACK_S = 2.0
"""Sound compared to find the delay: long enough for a sentence's rhythm. Judgement."""

LONGEST_DELAY_S = 0.6
"""Buffers of a speaker and a microphone together, wireless ones included. Judgement."""

LOOK_EVERY = 25
LOOK_LATER = 100
"""Frames between two looks: half a second until the delay is known, then two seconds."""

FIRST_GUESS = RATE_HZ * 32 // 1000
"""Delay taken before any is found: with the filter's 200 ms it serves everything from 20 to 220
ms.
"""

LIKENESS = 6.0
"""How far the best delay must stand out from the middle one to be believed. Judgement."""

EARLY = RATE_HZ * 12 // 1000
"""The reference is given 12 ms before the echo is due, since a filter cannot look ahead."""

SERVED = RATE_HZ * 120 // 1000
"""An echo up to 120 ms later than reckoned lies well inside the filter, which follows by itself."""

SLIPPED = RATE_HZ * 150 // 1000
SLIPPED_FRAMES = 25
"""Off by more than 150 ms for half a second: no jitter of callbacks does that."""

SAME = RATE_HZ * 20 // 1000
"""Two findings that differ by less than 20 ms agree."""

QUIET = 30.0
"""SoundRing or heard sound below this height (of 32 768) tells nothing of the delay."""


class EchoLine:
    """Aligns what was played with what was heard by their sample numbers, then cancels.

    The two streams' numbers are tied together once, at the first frame; the rest is the delay,
    looked for in the sound itself, so that buffers of any length are right after the first
    sentence.
    """

    def __init__(self, canceller: Canceller, played: SoundRing) -> None:
        self._canceller, self._played = canceller, played
        self._tie: int | None = None
        self._heard = np.zeros(int(LOOK_BACK_S * RATE_HZ), np.int16)
        self._frames = 0
        self._before: int | None = None
        self._found = False
        self._off = 0
        self.delay = FIRST_GUESS

    def clean(self, heard: Samples, first_sample: int, at_s: float) -> Samples:
        """int16[320] without the echo.

        first_sample: the number of the frame's first sample in the microphone's count; at_s: the
        second of the monotonic clock when it came.
        """
        if self._tie is None and self._played.written():
            self._tie = self._played.number_at(at_s) - (first_sample + FRAME)
        self._heard = np.concatenate([self._heard[FRAME:], heard])
        self._frames += 1
        if self._tie is None:
            return heard
        if self._slipped(first_sample, at_s):
            self.restart()
            return heard
        end = first_sample + FRAME + self._tie
        if self._frames % (LOOK_LATER if self._found else LOOK_EVERY) == 0:
            self._look_for_delay(end)
        start = end - FRAME - max(0, self.delay - EARLY)
        return self._canceller.clean(heard, self._played.read(start, FRAME))

    def restart(self) -> None:
        """A stream was opened anew, so its numbers begin anew too."""
        self._tie, self._before, self._found = None, None, False
        self._off = 0
        self.delay = FIRST_GUESS
        self._heard[:] = 0
        self._canceller.reset()

    def _slipped(self, first_sample: int, at_s: float) -> bool:
        """Whether one stream has stood still or lost sound, so that the numbers no longer match."""
        now = self._played.number_at(at_s) - (first_sample + FRAME)
        self._off = self._off + 1 if abs(now - (self._tie or 0)) > SLIPPED else 0
        return self._off >= SLIPPED_FRAMES

    def _look_for_delay(self, end: int) -> None:
        found = delay_between(self._played, self._heard, end)
        if found is None:
            return
        settled = self._before is not None and abs(found - self._before) < SAME
        self._before = found
        served = self.delay - EARLY < found < self.delay + SERVED
        # A jump costs the filter all that it has learned. At the first finding that is little, and
        # it learns best when the echo is early in it; later on two findings must agree.
        first = not self._found and abs(found - self.delay) > SAME
        if first or (settled and not served):
            self.delay = found
            self._canceller.reset()
        self._found = True


def delay_between(played: SoundRing, heard: Samples, end: int) -> int | None:
    """Samples by which the echo in `heard` comes after what was played, None when that cannot be
    told.

    heard: the microphone's last samples; end: the number in `played` that its end is tied to. The
    tie may be early by a block, so delays a little below zero are looked for as well.
    """
    length, longest = len(heard), int(LONGEST_DELAY_S * RATE_HZ)
    early = RATE_HZ // 10
    far = played.read(end - length - longest, length + longest + early).astype(np.float64)
    near = heard.astype(np.float64)
    if np.sqrt(np.mean(far**2)) < QUIET or np.sqrt(np.mean(near**2)) < QUIET:
        return None
    size = 1 << (len(far) + length).bit_length()
    cross = np.fft.rfft(far, size) * np.conj(np.fft.rfft(near, size))
    # Every pitch counts alike (the phase transform), so that a vowel does not match its own period.
    lags = np.fft.irfft(cross / (np.abs(cross) + 1e-3 * np.abs(cross).max() + 1.0), size)
    likely = lags[: longest + early + 1]
    best = int(np.argmax(likely))
    spread = float(np.std(likely))
    if spread == 0 or likely[best] < LIKENESS * spread:
        return None
    return longest - best
