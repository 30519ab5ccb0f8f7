"""The rehearsal's room plays the voice by its own time and keeps both sides."""

from __future__ import annotations

import wave
from pathlib import Path

import numpy as np

from reader.app.rehearsal.room import RoomVoice, Track, save_conversation
from reader.devices.ports import FRAME, SpeechEnded


def _voice(frames: int) -> tuple[RoomVoice, Track, list[object]]:
    told: list[object] = []
    track = Track()
    sound = np.full(frames * FRAME, 1000, np.int16)
    return RoomVoice(track, lambda text, rate: sound, told.append), track, told


def test_the_end_is_told_when_it_is_reached() -> None:
    """Three frames of speech end in the third frame, not before."""
    voice, track, told = _voice(3)
    voice.say("single crochet", 7)
    voice.frame()
    voice.frame()
    assert told == []
    assert voice.speaking() == "single crochet"
    voice.frame()
    assert told == [SpeechEnded(7, True, 2)]
    assert voice.speaking() == ""
    assert np.all(track.all_heard() == 1000)


def test_stopping_is_silence_at_once() -> None:
    """After stop the next frame is silent and the end is told as incomplete."""
    voice, _, told = _voice(3)
    voice.say("single crochet", 7)
    voice.frame()
    voice.stop()
    assert not voice.frame().any()
    assert told == [SpeechEnded(7, False, 0)]


def test_both_sides_lie_in_one_file(tmp_path: Path) -> None:
    """The maker is on the left, the program on the right; the shorter side ends in silence."""
    where = tmp_path / "both.wav"
    save_conversation(where, np.array([1, 2], np.int16), np.array([5], np.int16))
    with wave.open(str(where)) as sound:
        assert (sound.getnchannels(), sound.getframerate()) == (2, 16000)
        frames = np.frombuffer(sound.readframes(2), np.int16)
    assert frames.tolist() == [1, 5, 2, 0]
