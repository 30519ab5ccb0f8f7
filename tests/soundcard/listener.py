"""Listener: tells which of some sentences was heard at the speaker, without asking the program.

Debian's espeak-ng says every sentence on its own, in a process of its own, and what was heard is
laid against each, frame by frame with time let loose (dynamic time warping, Sakoe and Chiba 1978).
The sentence that lies nearest was heard, if it lies near enough.
"""

from __future__ import annotations

import io
import shutil
import subprocess
import wave
from functools import cache

import numpy as np
from numpy.typing import NDArray

from reader.devices.ports import RATE_HZ
from reader.devices.resample import at_our_rate
from tests.soundcard.rig import SPEAKER_HZ, Sound

Frames = NDArray[np.float64]

NEAR = 0.13
"""Mean distance of a frame, 0 to 2, below which a sentence was heard. On the demonstration
pattern's sentences the right one lies at 0.11 at most; wrong ones of the same length from 0.15 on.
"""

HOP = RATE_HZ // 50
BANDS = 28
WORDS_A_MINUTE = 170


def missing_listener() -> str:
    """Why nobody can listen here, "" when somebody can."""
    return "" if shutil.which("espeak-ng") else "listening to the speaker needs Debian's espeak-ng"


def distance(sound: Sound, sentence: str) -> float:
    """Mean distance from the sentence to where it fits best in what was heard; 2 in silence.

    sound: int16 at 48 kHz.
    """
    heard, told = frames_of(at_our_rate(sound, SPEAKER_HZ)), _spoken(sentence)
    if len(heard) < len(told) // 2:
        return 2.0
    apart = 1 - told @ heard.T
    best = apart[0].copy()
    for row in apart[1:]:
        # Each frame of the sentence lies on the frame of the one before it, or one or two later.
        steps = np.stack([best, np.r_[2e3, best[:-1]], np.r_[2e3, 2e3, best[:-2]]])
        best = row + steps.min(axis=0)
    return float(best.min() / len(told))


def sentence_heard(sound: Sound, sentences: tuple[str, ...]) -> str:
    """The one of these that was heard, "" when none was."""
    found = {one: distance(sound, one) for one in sentences}
    best = min(found, key=lambda one: found[one])
    return best if found[best] < NEAR else ""


def frames_of(sound: Sound) -> Frames:
    """float64[n, BANDS] of 16 kHz sound: a frame every 20 ms, its bands' loudness as a unit vector;
    nought in silence.
    """
    length = 2 * HOP
    starts = range(0, max(0, len(sound) - length), HOP)
    pieces = np.array([sound[at : at + length] for at in starts], np.float64).reshape(-1, length)
    power = np.abs(np.fft.rfft(pieces * np.hanning(length))) ** 2
    edges = np.unique(np.geomspace(4, power.shape[1] - 1, BANDS + 1).astype(int))
    bands = np.log(np.add.reduceat(power, edges[:-1], axis=1) + 1e6)
    shape = bands - np.log(1e6)
    shape = shape - shape.mean(axis=1, keepdims=True)
    norm = np.linalg.norm(shape, axis=1, keepdims=True)
    return np.where(norm > 1.0, shape / np.maximum(norm, 1.0), 0.0)


@cache
def _spoken(sentence: str) -> Frames:
    done = subprocess.run(
        ["espeak-ng", "-v", "en", "-s", str(WORDS_A_MINUTE), "--stdout", sentence],
        capture_output=True,
        timeout=20,
        check=True,
    )
    with wave.open(io.BytesIO(done.stdout)) as told:
        rate = told.getframerate()
    raw = done.stdout[44:]
    sound = at_our_rate(np.frombuffer(raw[: len(raw) // 2 * 2], np.int16), rate)
    loud = np.flatnonzero(np.abs(sound.astype(np.int32)) > 80)
    return frames_of(sound[loud[0] : loud[-1] + 1])
