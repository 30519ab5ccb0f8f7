"""What counts as heard: whole phrases said for certain; everything else is a doubt or nothing."""

from __future__ import annotations

from reader.listening.decide import settled
from reader.listening.heard import HeardWord

PHRASES = ("next", "where am i")


def words(*said: str, certainty: float = 0.9) -> tuple[HeardWord, ...]:
    """Words half a second each."""
    return tuple(HeardWord(w, certainty, 0.5 * n, 0.5 * n + 0.4) for n, w in enumerate(said))


def test_a_whole_phrase_is_heard() -> None:
    """Every word is certain."""
    heard = settled(words("where", "am", "i"), PHRASES, 2.0, 0.0)
    assert heard is not None
    assert heard.certain


def test_fillers_alone_are_nothing() -> None:
    """Speech that is not for us leaves nothing."""
    assert settled(words("[unk3]"), PHRASES, 2.0, 0.0) is None


def test_doubts_never_move() -> None:
    """Parts of a phrase, other words around it, too low a certainty: not sure."""
    for said, certainty, least in (
        (("where",), 0.9, 0.5),
        (("[unk3]", "next"), 0.9, 0.5),
        (("next", "[unk3]"), 0.9, 0.5),
        (("next",), 0.2, 0.5),
        (("next",), 0.9, 0.95),
    ):
        heard = settled(words(*said, certainty=certainty), PHRASES, 2.0, 0.0, least)
        assert heard is not None
        assert not heard.certain
        assert heard.doubt
