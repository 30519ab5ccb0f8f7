"""Echo line: microphone frames in, the same frames without our own voice out;
finds the delay by itself.
"""

from __future__ import annotations

from collections import deque

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

LOOKED_FRAMES = 80
"""Frames in which somebody else is looked for: 1.6 s, a command and the ear's decision on it."""

STAYS = 0.25
"""Share of the power heard that stays when somebody else speaks; of our own voice a hundredth
stays. Judgement, between the two.
"""

LOUD = 4_000.0
"""Power of a frame below which it is taken for the room's own noise: 36 dB under full speech."""

SOMEBODY_FRAMES = 6
"""So many frames that stayed are somebody: 0.12 s, less than the shortest word. Of 30 commands said
into the program's speech at -12 dB each had 13 or more, the speech alone none.
"""

TAKEN = 0.1
"""Share of the power heard below which a frame of echo counts as taken out. Judgement."""

PROVEN_FRAMES = 25
"""Half a second of echo taken out, before what stays is believed to be somebody. Judgement."""

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
        self._stayed: deque[bool] = deque(maxlen=LOOKED_FRAMES)
        self._proven = 0
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
        clean = self._canceller.clean(heard, self._played.read(start, FRAME))
        self._weigh(heard, clean)
        return clean

    def _weigh(self, heard: Samples, clean: Samples) -> None:
        """Notes whether this frame was our echo, and taken out, or somebody, and stayed."""
        before = float(np.mean(heard.astype(np.float64) ** 2))
        after = float(np.mean(clean.astype(np.float64) ** 2))
        self._proven += before > LOUD and after < TAKEN * before
        known = self._proven >= PROVEN_FRAMES
        self._stayed.append(known and after > LOUD and after > STAYS * before)

    def somebody(self) -> bool:
        """Whether somebody other than the program has spoken in the last 1.6 s; False where nothing
        is cancelled or the room is not learned yet, since then it cannot be told.
        """
        return self._canceller.cancels and sum(list(self._stayed)) >= SOMEBODY_FRAMES

    def restart(self) -> None:
        """A stream was opened anew, so its numbers begin anew too."""
        self._tie, self._before, self._found = None, None, False
        self._off = 0
        self.delay = FIRST_GUESS
        self._heard[:] = 0
        self._forget_the_room()

    def _forget_the_room(self) -> None:
        self._stayed.clear()
        self._proven = 0
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
            self._forget_the_room()
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
