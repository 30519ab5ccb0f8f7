"""The real ear hears a request with its number in one breath, and the plain request as before."""

from __future__ import annotations

import shutil

import numpy as np
import pytest

from reader.app.hear import listen
from reader.app.rehearsal.maker_voice import makers_voice
from reader.devices.ports import RATE_HZ
from reader.devices.recogniser import VoskRecogniser
from reader.session.breaths import breaths_for
from reader.session.listening import phrases_for
from tests.session.play import Play, demo

pytestmark = pytest.mark.skipif(not shutil.which("flite"), reason="needs flite")
PAUSE = np.zeros(RATE_HZ // 2, np.int16)


@pytest.mark.parametrize(
    "words", ["go to round four", "i have six", "go to round five", "go to row", "next"]
)
def test_one_breath_is_heard_whole(words: str) -> None:
    """flite's rms voice, in quiet; the grammar is that of the session's first step."""
    play = Play(demo("harbour-lighthouse"))
    phrases = (*phrases_for(play.state), *breaths_for(play.state))
    sound = np.concatenate([PAUSE, makers_voice("rms")(words), PAUSE, PAUSE])
    heard = listen(VoskRecogniser(""), phrases, sound)
    assert heard is not None
    assert heard.certain
    assert heard.text == words
