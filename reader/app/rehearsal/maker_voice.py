"""Maker's voice: the words of the scripted maker in, 16 kHz sound out, by a voice that is not the
program's.
"""

from __future__ import annotations

import io
import shutil
import subprocess
import wave
from collections.abc import Callable

import numpy as np

from reader.devices.ports import RATE_HZ, DeviceUnavailable, Samples

SPEECH_LIMIT_S = 30
"""A command of a few words is rendered in well under a second; beyond this something hangs."""

Speak = Callable[[str], Samples]


def makers_voice(name: str = "slt") -> Speak:
    """A function from words to sound; raises DeviceUnavailable when flite is not installed.

    name: one of flite's own voices (slt, rms, awb, kal16).
    """
    flite = shutil.which("flite")
    if flite is None:
        raise DeviceUnavailable(
            "The maker's voice of the rehearsal is missing: install the Debian package flite."
        )
    known: dict[str, Samples] = {}

    def speak(words: str) -> Samples:
        if words not in known:
            known[words] = _render(flite, name, words)
        return known[words]

    return speak


def _render(flite: str, voice: str, words: str) -> Samples:
    done = subprocess.run(
        [flite, "-voice", voice, "-t", words, "-o", "/dev/stdout"],
        capture_output=True,
        timeout=SPEECH_LIMIT_S,
        check=False,
    )
    if done.returncode != 0 or len(done.stdout) < 100:
        raise DeviceUnavailable(f"The maker's voice of the rehearsal could not say {words!r}.")
    return _at_our_rate(*_read_wav(done.stdout))


def _read_wav(content: bytes) -> tuple[Samples, int]:
    # flite writes to a pipe with lengths it cannot go back and correct, so the sound is taken whole
    # from behind the header, whatever length that gives.
    with wave.open(io.BytesIO(content)) as sound:
        rate = sound.getframerate()
    start = content.index(b"data") + 8
    body = content[start : start + (len(content) - start) // 2 * 2]
    return np.frombuffer(body, dtype=np.int16), rate


def _at_our_rate(samples: Samples, rate: int) -> Samples:
    if rate == RATE_HZ:
        return samples
    at = np.arange(0, len(samples) - 1, rate / RATE_HZ)
    resampled: Samples = np.interp(at, np.arange(len(samples)), samples).astype(np.int16)
    return resampled
