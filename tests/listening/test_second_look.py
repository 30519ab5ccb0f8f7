"""A maker's own samples: laid beside what was said, and the decision of recogniser and samples."""

from __future__ import annotations

import shutil

import numpy as np
import pytest

from reader.app.hear import listen
from reader.app.rehearsal.maker_voice import makers_voice
from reader.devices.model_place import load_network
from reader.devices.ports import RATE_HZ
from reader.devices.ports import Samples as Sound
from reader.devices.recogniser import VoskRecogniser
from reader.listening.heard import Heard, HeardWord
from reader.listening.likeness import Match, Samples
from reader.listening.own_ear import OwnEar, own_of
from reader.listening.second_look import LIMIT, Own, combined
from reader.listening.trace import Trace
from reader.listening.tune import strays

PAUSE = np.zeros(RATE_HZ // 2, np.int16)
needs_flite = pytest.mark.skipif(not shutil.which("flite"), reason="needs flite")


def trace(places: list[int], speaking: float = 1.0) -> Trace:
    """A trace whose frames are unit vectors along these of eight axes."""
    size = len(places)
    return Trace(
        np.eye(8, dtype=np.float32)[places],
        np.full(size, speaking, np.float32),
        np.zeros(size, np.float32),
    )


OWN = Own(
    Samples({"next": [trace([0, 0, 1, 1, 2, 2])], "go back": [trace([3, 3, 4, 4, 5, 5])]}),
    renamed=frozenset(("go back",)),
)
BOTH = frozenset(("next", "go back"))


def heard(text: str, doubt: str = "") -> Heard:
    """What the recogniser may say."""
    return Heard((HeardWord(text, 0.95, 1.0, 1.4),), not doubt, 1.0, 1.4, 1.9, doubt=doubt)


def match(phrase: str, far: float) -> Match:
    """A match, everything else far."""
    return Match(phrase, far, 0.9, 3, 12)


def decided(recogniser: Heard | None, found: Match | None) -> tuple[str, bool] | None:
    """What comes of both."""
    out = combined(recogniser, found, OWN, BOTH, 1.0, 2.0)
    return None if out is None else (out.text, out.certain)


def test_a_slower_saying_of_a_sample_lies_on_it() -> None:
    """Twice as slow costs nothing; where it lay is told."""
    slow = trace([7, 7, 0, 0, 0, 0, 1, 1, 1, 1, 2, 2, 2, 2, 7, 7], 0.0)
    found = OWN.samples.match(slow, BOTH)
    assert found is not None
    assert (found.phrase, round(found.far, 3)) == ("next", 0.0)
    assert 2 <= found.start <= 5
    assert 11 <= found.end <= 14


def test_only_what_can_be_said_now_is_compared() -> None:
    """A sample of a phrase outside the grammar is no match."""
    found = OWN.samples.match(trace([0, 0, 1, 1, 2, 2]), frozenset(("go back",)))
    assert found is not None
    assert found.phrase == "go back"
    assert found.far > LIMIT
    assert OWN.samples.match(trace([0, 0, 1, 1, 2, 2]), frozenset()) is None


def test_talk_around_a_word_makes_it_farther() -> None:
    """The same word with two seconds of speech behind it is no command any more than before."""
    alone = OWN.samples.match(trace([0, 0, 1, 1, 2, 2]), BOTH)
    amid = OWN.samples.match(trace([0, 0, 1, 1, 2, 2] + [7] * 60), BOTH)
    assert alone is not None
    assert amid is not None
    assert amid.far > alone.far + 0.05


@pytest.mark.parametrize(
    ("recogniser", "found", "comes"),
    [
        (heard("next"), match("next", 0.1), ("next", True)),
        (heard("next"), match("next", LIMIT + 0.2), ("next", False)),
        (heard("next", "low certainty"), match("next", LIMIT + 0.02), ("next", True)),
        (None, match("next", LIMIT - 0.1), ("next", True)),
        (None, match("next", LIMIT + 0.02), None),
        (heard("next"), match("go back", LIMIT + 0.02), ("next", False)),
        (heard("next"), match("go back", LIMIT - 0.15), ("go back", True)),
        (heard("again"), match("next", LIMIT + 0.2), ("again", True)),
        (heard("again"), match("next", LIMIT - 0.01), ("again", False)),
        (heard("next"), None, ("next", True)),
        (None, Match("next", 0.2, 0.205, 0, 9), ("next", False)),
    ],
)
def test_the_decision(
    recogniser: Heard | None, found: Match | None, comes: tuple[str, bool] | None
) -> None:
    """Agree: a move; samples sure: a move; disagree, or unlike the samples of that word: unsure."""
    assert decided(recogniser, found) == comes


def spoken(voice: str, words: str, seed: int) -> Sound:
    """Said by a voice, each time a little otherwise: another pace and another noise."""
    sound = makers_voice(voice)(words).astype(np.float64)
    chance = np.random.default_rng(seed)
    pace = 1 + 0.06 * (seed % 3 - 1)
    said = np.interp(np.arange(0, len(sound) - 1, pace), np.arange(len(sound)), sound)
    padded = np.concatenate([PAUSE, said * 0.5, PAUSE])
    return np.asarray(padded + chance.normal(0, 15, len(padded)), np.int16)


@needs_flite
def test_a_word_of_another_language_is_heard_for_a_command_and_nothing_else_is() -> None:
    """Three samples of a word that the recogniser does not know stand for "next"; a fourth is
    heard, the old word and a stranger's sentence are not.
    """
    network = load_network()
    assert network is not None
    sounds = {
        "next": [spoken("rms", "vorwarts", seed) for seed in (0, 1, 2)],
        "again": [spoken("rms", "nochmal", seed) for seed in (3, 4, 5)],
    }
    own = OwnEar(network, own_of(network, sounds, renamed=frozenset(("next",))))
    ear = VoskRecogniser("", own=lambda: own)
    phrases = ("next", "again", "pause", "where am i")
    found = listen(ear, phrases, spoken("rms", "vorwarts", 7))
    assert found is not None
    assert (found.text, found.certain) == ("next", True)
    for words in ("next", "the kettle is on the stove"):
        other = listen(ear, phrases, spoken("slt", words, 8))
        assert other is None or not other.certain
    plain = listen(ear, phrases, spoken("slt", "where am i", 9))
    assert plain is not None
    assert (plain.text, plain.certain) == ("where am i", True)


@needs_flite
def test_with_an_attention_word_both_are_compared() -> None:
    """Learned like the commands, "captain" before "next" moves; "next" alone and another word
    before it do not. Not learned, the recogniser decides alone.
    """
    network = load_network()
    assert network is not None
    sounds = {
        word: [spoken("rms", said, seed) for seed in range(3)]
        for word, said in (("captain", "captain"), ("next", "vorwarts"), ("again", "again"))
    }
    own = OwnEar(network, own_of(network, sounds, renamed=frozenset(("next",))))
    ear = VoskRecogniser("", own=lambda: own)
    phrases = ("captain next", "captain again", "captain where am i")
    found = listen(ear, phrases, spoken("rms", "captain, vorwarts", 4))
    assert found is not None
    assert (found.text, found.certain) == ("captain next", True)
    for words in ("vorwarts", "kettle vorwarts", "captain sandwich"):
        other = listen(ear, phrases, spoken("rms", words, 4))
        assert other is None or not other.certain
    without = OwnEar(network, own_of(network, {"next": sounds["next"]}))
    without.listen_for(phrases)
    assert not without.listens()


@needs_flite
def test_a_whistle_is_learned_too() -> None:
    """A rising tone, which the recogniser takes for silence, stands for "go back"."""
    network = load_network()
    assert network is not None

    def whistle(seed: int) -> Sound:
        length = int(RATE_HZ * (0.5 + 0.04 * seed))
        rise = np.linspace(900, 1500, length)
        tone = 4000 * np.sin(2 * np.pi * np.cumsum(rise) / RATE_HZ)
        noise = np.random.default_rng(seed).normal(0, 15, length + 2 * len(PAUSE))
        return np.asarray(np.pad(tone, len(PAUSE)) + noise, np.int16)

    sounds = {"go back": [whistle(n) for n in range(3)]}
    own = OwnEar(network, own_of(network, sounds, renamed=frozenset(("go back",))))
    ear = VoskRecogniser("", own=lambda: own)
    found = listen(ear, ("go back", "next"), whistle(4))
    assert found is not None
    assert (found.text, found.certain) == ("go back", True)
    plain = listen(ear, ("go back", "next"), spoken("slt", "next", 1))
    assert plain is not None
    assert (plain.text, plain.certain) == ("next", True)


@needs_flite
def test_a_sample_that_is_another_word_is_asked_for_again() -> None:
    """Two of "again" and one "pause": the third strays; three alike: none does."""
    network = load_network()
    assert network is not None
    alike = [spoken("rms", "again", seed) for seed in range(3)]
    assert strays(network, alike) is None
    assert strays(network, [alike[0], alike[1], spoken("rms", "pause", 2)]) == 2
