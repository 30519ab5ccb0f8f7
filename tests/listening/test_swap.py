"""Changing the phrases in the middle of a word loses none of its sound."""

from __future__ import annotations

import shutil

import numpy as np
import pytest

from reader.app.rehearsal.maker_voice import makers_voice
from reader.devices.recogniser import VoskRecogniser
from reader.listening.heard import Heard


@pytest.mark.skipif(shutil.which("flite") is None, reason="flite speaks the command")
def test_a_word_begun_before_the_change_is_heard_whole() -> None:
    """The phrases change a third of the way into the word."""
    sound = makers_voice("slt")("materials")
    loud = np.nonzero(np.abs(sound.astype(int)) > np.abs(sound.astype(int)).max() // 10)[0]
    word = sound[loud[0] : loud[-1]]
    before, after = np.zeros(4_800, np.int16), np.zeros(16_000, np.int16)
    clip = np.concatenate([before, word, after])
    ear = VoskRecogniser()
    ear.listen_for(("next", "materials"))
    split = len(before) + len(word) // 3
    ear.feed(clip[:split])
    ear.listen_for(("next", "materials", "pause"))
    heard = [one for one in (*ear.feed(clip[split:]), *ear.flush()) if isinstance(one, Heard)]
    assert [one.text for one in heard] == ["materials"]
    assert heard[0].said_at_s < split / 16_000 < heard[0].decided_s
