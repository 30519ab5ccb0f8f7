"""Conversations as short plays on a demonstration pattern: what is said and kept, and where."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as some

from reader.commands.command import Ask, Command
from reader.plan import find
from reader.session.effects import Close, Save, Say
from reader.session.events import CommandGiven, NotSure
from reader.session.listening import phrases_for
from reader.session.progress import from_plain, to_plain
from reader.session.start import begin
from reader.session.state import Mode, Tastes
from reader.session.transitions import respond
from reader.wording.talk import talk
from tests.session.play import Play, demo

PLAN = demo("harbour-lighthouse")


def lighthouse() -> Play:
    """A session at the beginning of the lighthouse."""
    return Play(PLAN)


def test_next_tells_the_count_of_a_finished_round() -> None:
    """Round 1 of a disc of six ends with six stitches (flat circles in single crochet begin with 6:
    craftymaria.blogspot.com 2009-06, mkcarroll.com 2009-05-14)."""
    assert "six stitches" in lighthouse().maker("next")


def test_how_many_gives_done_left_and_total() -> None:
    """The running total is always known."""
    play = lighthouse()
    for _ in range(3):
        play.maker("next")
    said = play.maker("how many")
    assert "three done" in said.lower()
    assert "fifteen left" in said.lower()
    assert "eighteen" in said.lower()


def test_back_undoes_next() -> None:
    """One step on and one back is the same place."""
    play = lighthouse()
    place = play.state.place
    play.maker("next")
    play.maker("go back")
    assert play.state.place == place


def test_undo_holds_ten_seconds() -> None:
    """A move is taken back within ten seconds, not after."""
    play = lighthouse()
    place = play.state.place
    play.maker("next")
    play.maker("undo that", after_s=5)
    assert play.state.place == place
    play.maker("next")
    moved = play.state.place
    play.maker("undo that", after_s=60)
    assert play.state.place == moved


def test_go_to_row_asks_and_goes() -> None:
    """Numbers are limited to rows that exist."""
    play = lighthouse()
    play.maker("go to row")
    assert "four" in phrases_for(play.state)
    assert "ninety nine" not in phrases_for(play.state)
    play.maker("four")
    assert find.row_at(PLAN, play.state.place).number == 4


def test_ripping_back_asks_first() -> None:
    """What costs something asks yes or no, and no leaves all as it was."""
    play = lighthouse()
    for _ in range(3):
        play.maker("row done")
    place = play.state.place
    play.maker("more words")
    play.maker("rip back")
    play.maker("two")
    assert play.state.mode is Mode.CONFIRM
    play.maker("no")
    assert play.state.place == place


def test_check_my_count_names_the_difference() -> None:
    """Four too few are told as four too few."""
    play = lighthouse()
    play.maker("go to row")
    play.maker("four")
    play.maker("check my count")
    assert "four too few" in play.maker("twenty")


def test_finish_saves_and_closes() -> None:
    """Finishing asks, saves, then closes."""
    play = lighthouse()
    play.maker("finish for today")
    play.maker("yes")
    kinds = [type(one) for one in play.effects]
    assert kinds.index(Save) < kinds.index(Say) < kinds.index(Close)


def test_every_move_is_saved_before_it_is_said() -> None:
    """A crash after the words costs nothing."""
    play = lighthouse()
    play.maker("next")
    kinds = [type(one) for one in play.effects]
    assert kinds.index(Save) < kinds.index(Say)


def test_three_unclear_words_are_explained_once() -> None:
    """Not sure moves nothing; the third in a row says how to go on, the fourth stays quiet."""
    play = lighthouse()
    place, said = play.state.place, 0
    for n in range(5):
        play.state, effects = respond(play.state, NotSure("next", float(n)))
        said += sum(isinstance(one, Say) for one in effects)
    assert said == 1
    assert play.state.place == place


@pytest.mark.parametrize("words", ["pause", "stop listening"])
def test_silence_is_kept(words: str) -> None:
    """Paused or not listening, the step words are not even listened for."""
    play = lighthouse()
    play.maker(words)
    assert "next" not in phrases_for(play.state)


@settings(max_examples=60, deadline=None)
@given(some.lists(some.tuples(some.sampled_from(list(Ask)), some.integers(-3, 120)), max_size=25))
def test_any_commands_keep_the_place_valid(asked: list[tuple[Ask, int]]) -> None:
    """Whatever is asked, in whatever order: the place exists, and what is kept comes back."""
    state, _ = begin(PLAN, None, Tastes(), 0.0)
    for at, (ask, number) in enumerate(asked):
        command = Command(ask, number if ask is Ask.NUMBER else None, "next")
        state, effects = respond(state, CommandGiven(command, float(at)))
        for one in effects:
            if isinstance(one, Say):
                assert isinstance(talk(one.sayings, state), str)
        assert find.exists(PLAN, state.place)
    kept = from_plain(PLAN, to_plain(state))
    assert kept is not None
    assert kept.place == state.place
