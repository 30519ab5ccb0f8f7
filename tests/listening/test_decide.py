"""What counts as heard: whole phrases, agreed by two looks; everything else is a doubt or nothing."""

from __future__ import annotations

from reader.listening.decide import settled
from reader.listening.heard import HeardWord

PHRASES = ("next", "where am i")


def words(*said: str, certainty: float = 0.9) -> tuple[HeardWord, ...]:
    """Words half a second each."""
    return tuple(HeardWord(w, certainty, 0.5 * n, 0.5 * n + 0.4) for n, w in enumerate(said))


def test_a_whole_phrase_is_heard() -> None:
    """Both looks agree."""
    heard = settled(words("where", "am", "i"), PHRASES, 2.0, 0.0, "where am i")
    assert heard is not None
    assert heard.certain


def test_fillers_alone_are_nothing() -> None:
    """Speech that is not for us leaves nothing."""
    assert settled(words("[unk3]"), PHRASES, 2.0, 0.0) is None


def test_doubts_never_move() -> None:
    """Parts of a phrase, other words around it, low certainty, disagreement: not sure."""
    for said, second, certainty in (
        (("where",), None, 0.9),
        (("[unk3]", "next"), "next", 0.9),
        (("next",), "next", 0.2),
        (("next",), "", 0.9),
    ):
        heard = settled(words(*said, certainty=certainty), PHRASES, 2.0, 0.0, second)
        assert heard is not None
        assert not heard.certain
        assert heard.doubt
