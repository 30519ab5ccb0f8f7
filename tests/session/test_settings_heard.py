"""Plays on the maker's own choices: the voice, the steps, the words, the attention word."""

from __future__ import annotations

from reader.plan.step import Grain
from reader.session.effects import KeepTastes, SetVoice
from reader.session.listening import phrases_for
from reader.session.state import Tastes, Words
from tests.session.play import Play, demo, perform

PLAN = demo("harbour-lighthouse")


def test_choices_hold_from_the_first_words_and_after_coming_back() -> None:
    """A session begins with the chosen rate and steps, new or resumed."""
    play = Play(PLAN, Tastes(rate=120, volume=0.5, grain=Grain.ROW, words=Words.SHORT))
    assert SetVoice(120, 0.5) in play.effects
    play = perform(
        """
        maker: row done
        maker: next
        program: twelve stitches
        away: 1
        program: round three
        """,
        play,
    )
    assert SetVoice(120, 0.5) in play.effects
    assert play.state.tastes.grain is Grain.ROW


def test_what_is_changed_by_voice_is_kept_for_next_time() -> None:
    """Slower, louder, bigger steps, short words: each asks to be kept."""
    play = Play(PLAN)
    for words in ("slower", "louder"):
        play.maker(words)
        assert KeepTastes() in play.effects
    for words in ("bigger steps", "short words"):
        play.maker("more words")
        play.maker(words)
        assert KeepTastes() in play.effects
    assert play.state.tastes == Tastes(Grain.PHRASE, Words.SHORT, rate=150, volume=1.15)


def test_cautions_are_left_out_where_they_are_not_wanted() -> None:
    """The gravel's caution is spoken unless it was switched off."""
    for wanted in (True, False):
        play = Play(PLAN, Tastes(cautions=wanted))
        said = [play.maker("row done") for _ in range(80)]
        assert sum("Small parts" in words for words in said) == int(wanted)


def test_an_attention_word_stands_before_commands_but_not_before_answers() -> None:
    """Beside a film nothing is a command without the word; an open question needs none."""
    play = Play(PLAN, Tastes(attention="captain"))
    assert "captain next" in phrases_for(play.state)
    assert "next" not in phrases_for(play.state)
    play.key("g")
    assert "four" in phrases_for(play.state)
