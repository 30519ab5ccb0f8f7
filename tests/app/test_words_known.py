"""Every fixed phrase of the conversation is made of words that the shipped ear has learned."""

from __future__ import annotations

import pytest

from reader.commands.numbers import say_number
from reader.commands.phrases import TABLE
from reader.devices.model_check import model_folder, model_trouble
from reader.devices.model_place import known_words
from reader.devices.recogniser import VoskRecogniser
from reader.session.marking import NAMES
from reader.session.noting import SPOKEN


@pytest.mark.skipif(bool(model_trouble(model_folder(""))), reason="the shipped ear is not there")
def test_what_is_taught_can_be_heard() -> None:
    """Requests, numbers, names of marks and spoken notes are in the recogniser's own graph."""
    requests = tuple(phrase for words in TABLE for phrase in words.phrases)
    numbers = tuple(say_number(number) for number in range(200))
    said = (*requests, *numbers, *NAMES, *SPOKEN)
    assert {word for phrase in said for word in phrase.split()} <= known_words("")


@pytest.mark.skipif(bool(model_trouble(model_folder(""))), reason="the shipped ear is not there")
def test_a_name_of_any_word_can_be_heard() -> None:
    """By the proof: words of the dictionary, words joined, words made of letters; but for
    abbreviations."""
    ear = VoskRecogniser()
    ear.listen_for(("left sleeve", "lantern room", "porthole", "gromble", "bw rnd", "no"))
    assert ear.unknown == ("bw rnd",)
