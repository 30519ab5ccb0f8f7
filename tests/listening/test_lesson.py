"""What a lesson's samples come to: the limit and the least certainty stay within reason."""

from __future__ import annotations

import shutil

import numpy as np
import pytest

from reader.devices.model_place import load_network
from reader.listening.decide import LEAST_CERTAIN
from reader.listening.heard import Heard
from reader.listening.lesson import Lesson
from reader.listening.second_look import HIGHEST, LOWEST
from tests.listening.test_second_look import heard, spoken

pytestmark = pytest.mark.skipif(not shutil.which("flite"), reason="needs flite")


def lesson_of(recogniser: Heard | None, *words: tuple[str, str]) -> Lesson:
    """A lesson in which these phrases were each said so; the recogniser always hears the same."""
    network = load_network()
    assert network is not None
    lesson = Lesson(network, lambda sound: recogniser)
    lesson.room(np.asarray(np.random.default_rng(0).normal(0, 15, 48_000), np.int16))
    for phrase, said in words:
        for seed in range(3):
            lesson.take(phrase, spoken("rms", said, seed))
    return lesson


def test_the_limit_is_chosen_within_bounds() -> None:
    """Two words said well leave it near the shipped one; nothing learned, nothing chosen."""
    own = lesson_of(None, ("next", "next"), ("pause", "pause")).own_words()
    assert LOWEST <= own.limit <= HIGHEST
    assert set(own.sounds) == {"next", "pause"}
    assert not lesson_of(None).own_words().sounds


def test_the_recognisers_mistakes_raise_its_certainty_and_misses_never_lower_it() -> None:
    """It takes "next" for "again" at 0.95: the least certainty rises over it; deaf, it stays."""
    mistaken = heard("again")
    assert lesson_of(mistaken, ("next", "next")).own_words().least > LEAST_CERTAIN
    assert lesson_of(None, ("next", "next")).own_words().least == LEAST_CERTAIN


def test_a_word_that_is_said_like_another_is_named() -> None:
    """ "text" taught for pause after "next" for next: the third sample tells which."""
    lesson = lesson_of(None, ("next", "next"))
    judged = [lesson.take("pause", spoken("rms", "next", seed)) for seed in (3, 4, 5)]
    assert judged[-1].missed
    assert judged[-1].like == "next"


def test_what_was_left_out_stays_as_it_was_taught_before() -> None:
    """Begun anew and left, a word keeps its earlier samples."""
    network = load_network()
    assert network is not None
    known = lesson_of(None, ("next", "next")).own_words()
    lesson = Lesson(network, known=known)
    lesson.take("next", spoken("rms", "pause", 1))
    assert lesson.whole() == ()
    lesson.leave("next")
    assert lesson.whole() == ("next",)
    assert np.array_equal(lesson.own_words().sounds["next"][0], known.sounds["next"][0])
