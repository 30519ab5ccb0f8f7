"""The real voice, heard at the virtual speaker: it starts soon, stops at once, survives hurry."""

from __future__ import annotations

import queue
import time
from collections.abc import Iterator

import numpy as np
import pytest

from reader.devices.ports import SpeechEnded
from reader.devices.speaking import Speaking
from tests.soundcard.rig import SPEAKER_HZ, SoundCard, decibels, first_loud, last_loud

pytestmark = pytest.mark.soundcard
LONG = "Double crochet in each of the next twelve stitches, then turn your work and chain one. " * 3


class Heard(Speaking):
    """Everything that speaks, and what it pushed."""

    def __init__(self) -> None:
        self.events: queue.Queue[object] = queue.Queue()
        super().__init__(self.events.put, {"heard": ((880.0, 90.0, 0.6),)})

    def next_event(self, limit_s: float = 10.0) -> object:
        return self.events.get(timeout=limit_s)


@pytest.fixture
def speaking(card: SoundCard) -> Iterator[Heard]:
    """The program's voice on the virtual card."""
    ready = Heard()
    ready.open()
    time.sleep(0.4)
    yield ready
    ready.close()


def test_words_are_heard_within_150_ms(speaking: Heard, card: SoundCard) -> None:
    """A sentence not rendered before is audible soon after `say`, recorder's own delay included."""
    time.sleep(0.3)
    with card.heard_at("spk.monitor") as heard:
        said_s = time.monotonic()
        speaking.voice.say("Row three, six single crochet.", 1)
        assert speaking.next_event() == SpeechEnded(1, True, 5)
        time.sleep(0.2)
    start = first_loud(heard.samples())
    assert start is not None
    late_ms = (heard.started_s + start / SPEAKER_HZ - said_s) * 1000
    print(f"say to audible {late_ms:.0f} ms")
    assert late_ms < 150


def test_stop_is_silence_within_200_ms(speaking: Heard, card: SoundCard) -> None:
    """The 200 ms of the barge-in limit hold at the speaker, buffers included."""
    with card.heard_at("spk.monitor") as heard:
        speaking.voice.say(LONG, 7)
        time.sleep(1.2)
        stopped_s = time.monotonic()
        speaking.voice.stop()
        ended = speaking.next_event()
        time.sleep(0.6)
    assert isinstance(ended, SpeechEnded)
    assert ended.number == 7
    assert not ended.complete
    assert 1 <= ended.words_said <= 8
    end = last_loud(heard.samples())
    assert end is not None
    late_ms = (heard.started_s + end / SPEAKER_HZ - stopped_s) * 1000
    print(f"stop to silence {late_ms:.0f} ms")
    assert late_ms < 200


def test_softening_lowers_the_voice_by_12_db(speaking: Heard, card: SoundCard) -> None:
    """Somebody speaks: the same words come 12 dB quieter, within 2 dB."""
    levels = []
    for soft in (False, True):
        with card.heard_at("spk.monitor") as heard:
            speaking.voice.soften(soft)
            time.sleep(0.1)
            speaking.voice.say("Chain one and turn.", 1)
            speaking.next_event()
            time.sleep(0.3)
        levels.append(decibels(_loud_part(heard.samples())))
    print(f"softened by {levels[0] - levels[1]:.1f} dB")
    assert levels[0] - levels[1] == pytest.approx(12, abs=2)


def _loud_part(sound: np.ndarray) -> np.ndarray:
    start, end = first_loud(sound, 50), last_loud(sound, 50)
    assert start is not None
    assert end is not None
    return sound[start:end]


def test_a_chime_sounds_over_speech_and_alone(speaking: Heard, card: SoundCard) -> None:
    """The chime's pitch is heard at the speaker."""
    with card.heard_at("spk.monitor") as heard:
        speaking.chimes.chime("heard")
        time.sleep(0.5)
    sound = _loud_part(heard.samples()).astype(np.float64)
    spectrum = np.abs(np.fft.rfft(sound * np.hanning(len(sound))))
    pitch = float(np.argmax(spectrum)) * SPEAKER_HZ / len(sound)
    assert pitch == pytest.approx(880, abs=15)


def test_two_hundred_hurried_says_and_stops(speaking: Heard) -> None:
    """Every text ends exactly once, in order, however it is interrupted."""
    for number in range(200):
        speaking.voice.say(f"Round {number % 30}, chain one.", number)
        if number % 3 == 0:
            speaking.voice.stop()
        time.sleep(0.004 * (number % 5))
    speaking.voice.stop()
    ended = [speaking.next_event(3) for _ in range(200)]
    assert [e.number for e in ended if isinstance(e, SpeechEnded)] == list(range(200))
    time.sleep(0.2)
    assert speaking.events.empty()
    speaking.voice.say("Still here.", 500)
    assert speaking.next_event() == SpeechEnded(500, True, 2)
