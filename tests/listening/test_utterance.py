"""The room's level and the microphone's, and single utterances cut out of a stream."""

from __future__ import annotations

import numpy as np
import pytest

from reader.devices.fakes import FakeRecogniser
from reader.devices.ports import FRAME, RATE_HZ, RoomHeard, SampleHeard, Samples
from reader.devices.sample_ear import SampleEars
from reader.listening.room import noise_db, room_trouble, voice_trouble
from reader.listening.utterance import Utterance


def noise(seconds: float, height: float) -> Samples:
    """White noise of this standard deviation."""
    sound = np.random.default_rng(3).normal(0, height, int(seconds * RATE_HZ))
    return np.clip(sound, -32768, 32767).astype(np.int16)


def frames(sound: Samples) -> list[Samples]:
    """The sound as it comes in, 20 ms at a time."""
    return list(sound[: len(sound) // FRAME * FRAME].reshape(-1, FRAME))


@pytest.mark.parametrize(
    ("height", "trouble"), [(0.0, "dead microphone"), (20.0, ""), (800.0, "loud room")]
)
def test_what_is_wrong_with_a_room(height: float, trouble: str) -> None:
    """Digital silence is a muted microphone; a film beside it is too loud."""
    assert room_trouble(noise(3, height)) == trouble


@pytest.mark.parametrize(
    ("room", "height", "trouble"),
    [
        (10.0, 2000.0, ""),
        (10.0, 90.0, "faint"),
        (600.0, 1000.0, "buried"),
        (10.0, 40000.0, "too loud"),
    ],
)
def test_what_is_wrong_with_a_voice(room: float, height: float, trouble: str) -> None:
    """Clipped, hardly above the room, or faint."""
    assert voice_trouble(noise(1, height), noise_db(noise(3, room))) == trouble


def test_an_utterance_is_cut_out_with_a_little_quiet_around() -> None:
    """Half a second of voice between two seconds of room gives about a second."""
    room = noise(2, 10)
    cut = Utterance(noise_db(room))
    said = [
        one
        for frame in frames(np.concatenate([room, noise(0.5, 3000), room]))
        if (one := cut.feed(frame)) is not None
    ]
    assert len(said) == 1
    assert 0.9 < len(said[0]) / RATE_HZ < 1.4


def test_a_knock_is_no_utterance_and_endless_sound_ends() -> None:
    """60 ms are nothing; a film that goes on is cut after four seconds."""
    room = noise(2, 10)
    knock = np.concatenate([room, noise(0.06, 8000), room])
    cut = Utterance(noise_db(room))
    assert all(cut.feed(frame) is None for frame in frames(knock))
    film = [one for frame in frames(noise(6, 3000)) if (one := cut.feed(frame)) is not None]
    assert [round(len(one) / RATE_HZ) for one in film[:1]] == [4]


def test_the_ear_takes_the_room_then_samples_then_phrases() -> None:
    """Each only when asked for; nobody for eight seconds is told as nothing."""
    came: list[object] = []
    recogniser = FakeRecogniser()
    ear = SampleEars(recogniser, came.append)

    def hears(sound: Samples) -> None:
        for number, frame in enumerate(frames(sound)):
            ear.take(frame, number * FRAME, 0.0)

    ear.measure(2)
    hears(noise(2.5, 10))
    assert [type(one) for one in came] == [RoomHeard]
    ear.sample(noise_db(noise(2, 10)))
    hears(np.concatenate([noise(1, 10), noise(0.5, 3000), noise(1, 10)]))
    assert [type(one) for one in came] == [RoomHeard, SampleHeard]
    ear.sample(noise_db(noise(2, 10)))
    hears(noise(9, 10))
    assert came[-1] == SampleHeard(None)
    ear.close()
    assert 0 < recogniser.fed < 4 * RATE_HZ
