"""The maker's samples: thresholds that refuse mistakes, words that fail, better words."""

from __future__ import annotations

from reader.listening.alike import apart, most_apart
from reader.listening.decide import LEAST_CERTAIN
from reader.listening.heard import Heard, HeardWord
from reader.listening.tune import HIGHEST, LOWEST, Sample, better_word, tuned


def heard(text: str, certainty: float, doubt: str = "") -> Heard:
    """One utterance of one word."""
    return Heard((HeardWord(text, certainty, 0.0, 0.4),), not doubt, 0.0, 0.4, 0.8, doubt=doubt)


def test_apart_is_a_measure() -> None:
    """Same sounds 0, nothing shared 1, a change within a kind half of a change beyond it."""
    assert apart(("N", "OW"), ("N", "OW")) == 0.0
    assert apart(("S", "IY"), ("B", "AW")) == 1.0
    assert apart(("B", "AY"), ("P", "AY")) == 0.25
    assert apart(("B", "AY"), ("S", "AY")) == 0.5
    assert apart(("B", "AY"), ("B",)) == apart(("B",), ("B", "AY")) == 0.5


def test_without_samples_all_stays_as_shipped() -> None:
    """Nothing is known of this maker."""
    assert tuned(()).least == LEAST_CERTAIN


def test_a_faint_voice_lowers_the_threshold_and_mistakes_raise_it() -> None:
    """Right at 0.7 only: lower; a mistake at 0.9 among right ones at 0.95: above the mistake."""
    faint = [Sample("next", heard("next", 0.7, "low certainty"))] * 3
    assert LOWEST <= tuned(faint).least <= 0.7
    assert tuned(faint).understood == 1.0
    mixed = [Sample("next", heard("next", 0.95))] * 3 + [Sample("again", heard("next", 0.9))]
    assert 0.9 < tuned(mixed).least <= 0.95
    assert tuned(mixed).taken_for == ()


def test_the_room_counts_as_mistakes() -> None:
    """A film that says next at 0.85 is refused where the maker's own lie above."""
    own = [Sample("next", heard("next", 0.98))] * 3
    assert 0.85 < tuned(own, [heard("next", 0.85)]).least <= HIGHEST


def test_words_that_fail_are_named() -> None:
    """Twice of three not heard, or heard in pieces only, or taken for another."""
    samples = [
        Sample("pause", None),
        Sample("pause", heard("pause", 0.9, "other words around it")),
        Sample("pause", heard("pause", 0.99)),
        *[Sample("next", heard("next", 0.99))] * 3,
        *[Sample("left", heard("next", 1.0))] * 3,
    ]
    result = tuned(samples)
    assert result.often_missed == ("pause", "left")
    assert result.taken_for == (("left", "next"),)


def test_a_better_word_sounds_like_no_other() -> None:
    """Of "test" and "onward" for "next" beside "rest", onward is further away."""
    sounds = {
        "next": ("N", "EH", "K", "S", "T"),
        "rest": ("R", "EH", "S", "T"),
        "test": ("T", "EH", "S", "T"),
        "onward": ("AA", "N", "W", "ER", "D"),
    }
    assert better_word("next", ("test", "onward", "next"), ("next", "rest"), sounds) == "onward"
    assert most_apart(("hmm",), (), sounds) == ""
