"""Our own voice is taken out of the microphone, whatever the delay; a person speaking is left."""

from __future__ import annotations

import numpy as np
import pytest

from reader.devices import echo
from reader.devices.echo import NoCanceller, SpeexCanceller, open_canceller
from reader.devices.echo_line import EchoLine
from reader.devices.ports import FRAME, RATE_HZ
from reader.devices.sound_ring import SoundRing
from tests.soundcard.rig import decibels

ROOM = {0: 1.0, 77: 0.4, 300: 0.25, 900: 0.1}
"""Reflections of an invented room: samples late and share."""


def babble(seconds: float, seed: int) -> np.ndarray:
    """Speech-like noise, invented: hum and hiss in syllables of a quarter second, int16."""
    rng = np.random.default_rng(seed)
    parts = []
    for _ in range(int(seconds * 4)):
        at_s = np.arange(RATE_HZ // 4) / RATE_HZ
        pitch = rng.uniform(90, 220)
        hum = sum(np.sin(2 * np.pi * pitch * n * at_s) / n for n in range(1, 25))
        hiss = rng.normal(0, 0.3, len(at_s))
        parts.append((hum + hiss) * np.sin(np.pi * at_s * 4) ** 2 * rng.choice([0.2, 1.0, 1.0]))
    return (np.concatenate(parts) * 3000).astype(np.int16)


def echo_of(far: np.ndarray, delay: int, level_db: float) -> np.ndarray:
    """What the microphone hears of it."""
    heard = np.zeros(len(far))
    for late, share in ROOM.items():
        start = delay + late
        heard[start:] += far[: len(far) - start] * share
    return heard * 10 ** (level_db / 20)


def run(far: np.ndarray, heard: np.ndarray, line: EchoLine, played: SoundRing) -> np.ndarray:
    """All frames through the line, with the speaker's block 20 ms ahead."""
    out = []
    for first in range(0, len(far) - FRAME + 1, FRAME):
        at_s = first / RATE_HZ
        played.write(far[first : first + FRAME], at_s)
        frame = heard[first : first + FRAME].astype(np.int16)
        out.append(line.clean(frame, first, at_s))
    return np.concatenate(out)


def line_with_speex() -> tuple[EchoLine, SoundRing]:
    """A line with the real canceller, skipped without the library."""
    played = SoundRing()
    try:
        return EchoLine(SpeexCanceller(), played), played
    except OSError as error:
        pytest.skip(str(error))


@pytest.mark.parametrize("delay_ms", [40, 120, 320])
def test_echo_is_20_db_down_after_three_seconds(delay_ms: int) -> None:
    """Delays inside the filter and one far outside, which has to be found first."""
    line, played = line_with_speex()
    far = babble(12, 1)
    heard = echo_of(far, delay_ms * RATE_HZ // 1000, -12)
    left = run(far, heard, line, played)
    late = slice(6 * RATE_HZ, 11 * RATE_HZ)
    gain = decibels(heard[late]) - decibels(left[late])
    print(f"delay {delay_ms} ms: echo {gain:.1f} dB down")
    assert gain > 20


def test_a_person_is_left_when_nothing_is_played() -> None:
    """Silence played: the person passes with less than 1 dB lost."""
    line, played = line_with_speex()
    person = babble(6, 2)
    left = run(np.zeros_like(person), person, line, played)
    late = slice(3 * RATE_HZ, 6 * RATE_HZ)
    assert decibels(person[late]) - decibels(left[late]) < 1.0


def test_a_person_speaking_over_it_stays_louder_than_what_is_left() -> None:
    """Both at once: after cancelling the person stands at least 10 dB above the rest of the
    echo.
    """
    line, played = line_with_speex()
    far = babble(12, 3)
    person = np.zeros(len(far))
    person[8 * RATE_HZ : 10 * RATE_HZ] = babble(2, 4)
    left = run(far, echo_of(far, 700, -12) + person, line, played)
    over = decibels(left[8 * RATE_HZ : 10 * RATE_HZ])
    alone = decibels(left[6 * RATE_HZ : 8 * RATE_HZ])
    print(f"person {over:.1f} dB, rest of echo {alone:.1f} dB")
    assert over - alone > 10


def test_somebody_is_told_from_our_own_voice() -> None:
    """Our own echo alone is nobody, a person over it is somebody, and soon after he is gone."""
    line, played = line_with_speex()
    far, near = babble(10, 1), np.zeros(10 * RATE_HZ)
    near[5 * RATE_HZ : 6 * RATE_HZ] = babble(1, 9) * 0.6
    heard = echo_of(far, 640, -12) + near
    told = []
    for first in range(0, len(far) - FRAME + 1, FRAME):
        played.write(far[first : first + FRAME], first / RATE_HZ)
        line.clean(heard[first : first + FRAME].astype(np.int16), first, first / RATE_HZ)
        told.append(line.somebody())
    second = RATE_HZ // FRAME
    assert not any(told[: 5 * second])
    assert told[6 * second]
    assert not any(told[8 * second :])


def test_without_a_canceller_nobody_is_told_from_it() -> None:
    """What cannot be known is never taken for a person."""
    played = SoundRing()
    line = EchoLine(NoCanceller(), played)
    far = babble(2, 1)
    run(far, echo_of(far, 640, -12), line, played)
    assert not line.somebody()


def test_a_stream_that_stood_still_is_tied_anew() -> None:
    """The speaker skipped a second; after some seconds the echo is down again."""
    line, played = line_with_speex()
    far = babble(16, 5)
    heard = echo_of(far, 900, -12)
    run(far[: 6 * RATE_HZ], heard[: 6 * RATE_HZ], line, played)
    out = []
    for first in range(6 * RATE_HZ, 15 * RATE_HZ, FRAME):
        # The microphone has lost one second of sound, so its numbers lag behind.
        at_s = first / RATE_HZ
        played.write(far[first : first + FRAME], at_s)
        frame = heard[first : first + FRAME].astype(np.int16)
        out.append(line.clean(frame, first - RATE_HZ, at_s))
    left = np.concatenate(out)[5 * RATE_HZ :]
    gain = decibels(heard[11 * RATE_HZ : 15 * RATE_HZ]) - decibels(left)
    print(f"after a slip {gain:.1f} dB down")
    assert gain > 15


def test_without_the_library_nothing_is_changed_and_it_is_said(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """The twin gives back what it heard; the sentence says what to do."""
    monkeypatch.setattr(echo, "LIBRARIES", ("no-such-library.so",))
    monkeypatch.setattr(echo.ctypes.util, "find_library", lambda name: None)
    canceller, sentence = open_canceller()
    assert isinstance(canceller, NoCanceller)
    assert "headphones" in sentence
    frame = babble(1, 6)[:FRAME]
    assert np.array_equal(canceller.clean(frame, frame), frame)
