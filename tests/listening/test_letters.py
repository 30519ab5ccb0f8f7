"""Words by their letters: sounds a reader would give them, and nothing for what is no word."""

from __future__ import annotations

import pytest

from reader.devices.pronunciations import ways_of
from reader.listening.letters import MOST_WAYS, by_letters


@pytest.mark.parametrize(
    ("word", "said"),
    [
        ("snood", "S N UW D"),
        ("beanie", "B IY N IY"),
        ("raglan", "R AE G L AH N"),
        ("shawlette", "SH AO L EH T"),
        ("gnome", "N OW M"),
        ("mitred", "M AY T ER D"),
        ("bobbles", "B AA B AH L Z"),
        ("thrum", "TH R AH M"),
    ],
)
def test_a_word_is_said_as_it_is_written(word: str, said: str) -> None:
    """Among the ways that are tried stands the one that is right."""
    ways = by_letters(word)
    assert tuple(said.split()) in ways
    assert len(ways) <= MOST_WAYS


def test_what_is_no_word_has_no_sound() -> None:
    """Abbreviations, figures, nothing at all."""
    assert by_letters("rnd") == by_letters("2nd") == by_letters("") == ()


def test_two_words_joined_sound_like_both() -> None:
    """One that the dictionary lacks but whose halves it holds; one that it has stays as it is."""
    assert ways_of("wheelhouse")[0] == ways_of("wheel")[0] + ways_of("house")[0]
    assert ways_of("next")[0] == ("N", "EH", "K", "S", "T")
    assert ways_of("rnd") == ()
