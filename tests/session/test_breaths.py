"""Plays on requests with their number in one breath; two turns stay possible."""

from __future__ import annotations

from reader.session.breaths import breaths_for
from reader.session.state import Mode, Tastes
from tests.session.play import Play, demo, perform

PLAN = demo("harbour-lighthouse")


def test_a_row_is_gone_to_in_one_breath_or_in_two_turns() -> None:
    """Either way the same place; numbers that do not exist cannot be heard."""
    perform(
        """
        maker: go to round four
        place: round four
        maker: go to row
        program: which round
        maker: two
        place: round two
        """,
        Play(PLAN),
    )
    assert "go to round ninety" not in breaths_for(Play(PLAN).state)


def test_a_count_is_told_in_one_breath_and_compared() -> None:
    """Twenty-four are wanted in round four."""
    play = perform("maker: go to round four\nmaker: i have twenty", Play(PLAN))
    assert "four too few" in play.answer
    assert play.state.mode is Mode.CONFIRM
    assert breaths_for(play.state) == ()


def test_ripping_back_in_one_breath_still_asks() -> None:
    """What costs something asks; only rows behind can be named."""
    play = perform("maker: go to round four\nmaker: rip back to round two", Play(PLAN))
    assert "yes or no" in play.answer.lower()
    play.maker("yes")
    assert "round two" in play.place().lower()
    assert "rip back to round four" not in breaths_for(play.state)


def test_the_attention_word_stands_before_each() -> None:
    """Beside a film nothing is a command without it."""
    state = Play(PLAN, Tastes(attention="captain")).state
    assert all(phrase.startswith("captain ") for phrase in breaths_for(state))
