"""Every fixed phrase of the conversation is made of words that the shipped ear has learned."""

from __future__ import annotations

import pytest

from reader.commands.numbers import say_number
from reader.commands.phrases import TABLE
from reader.devices.model_check import model_folder, model_trouble
from reader.devices.recogniser import VoskRecogniser
from reader.session.marking import NAMES
from reader.session.noting import SPOKEN


@pytest.mark.skipif(bool(model_trouble(model_folder(""))), reason="the shipped ear is not there")
def test_what_is_taught_can_be_heard() -> None:
    """Requests, numbers, names of marks and spoken notes; an unknown word could never be heard."""
    requests = tuple(phrase for words in TABLE for phrase in words.phrases)
    numbers = tuple(say_number(number) for number in range(200))
    ear = VoskRecogniser()
    ear.listen_for((*requests, *numbers, *NAMES, *SPOKEN))
    assert ear.unknown == ()
