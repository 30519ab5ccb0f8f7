"""The voice is lowered as soon as somebody speaks, and comes back when that was not for us."""

from __future__ import annotations

from reader.app.loop import Loop
from reader.devices.fakes import FakeClock, FakeVoice
from reader.devices.ports import SpeechStarted
from reader.listening.heard import Heard, HeardWord
from tests.session.play import Play, demo


def test_the_voice_is_lowered_while_the_maker_speaks() -> None:
    """Lowered at the first sound of speech; raised again once it is known what that was."""
    clock = FakeClock()
    play = Play(demo("harbour-lighthouse"))
    voice = FakeVoice(clock, lambda event: None)
    loop = Loop(voice, None, None, None, None, clock)
    loop.start(play.state, play.effects)
    before = len(voice.softened)
    loop.one(SpeechStarted(0.5))
    assert voice.softened[before:] == [True]
    talk = (HeardWord("[unk3]", 1.0, 0.4, 0.9),)
    loop.one(Heard(talk, False, 0.4, 0.9, 1.2))
    assert voice.softened[before:] == [True, False]
    assert len(voice.said) == 1
