"""Plays on how things are said: steps, lengths, as written, explained, rests; a key for each."""

from __future__ import annotations

import pytest

from reader.commands.command import Ask, Command
from reader.commands.phrases import MAIN, MORE, PEDAL, TABLE, ask_of_key, phrases_of
from reader.session.effects import Chime, Say
from reader.session.events import CommandGiven, DeviceCame, DeviceWent, KeyUnknown
from reader.session.state import Tastes
from reader.session.transitions import respond
from reader.wording.talk import talk
from tests.session.play import Play, demo, perform, plan_of

LIGHTHOUSE = demo("harbour-lighthouse")


def test_steps_grow_and_shrink_and_the_place_stays() -> None:
    """Group, phrase, row and back; in the middle of a round nothing is read twice or lost."""
    perform(
        """
        maker: go to row
        maker: four
        maker: next
        program: two of six
        maker: more words
        maker: bigger steps
        program: now by phrase
        maker: more words
        maker: bigger steps
        program: now by whole row
        maker: more words
        maker: bigger steps
        program: can't go further
        maker: next
        program: round complete
        place: round five
        maker: go back
        place: round four
        program: six times
        maker: more words
        maker: smaller steps
        maker: more words
        maker: smaller steps
        program: pass one of six
        place: round four
        """,
        Play(LIGHTHOUSE),
    )


def test_three_lengths_of_words() -> None:
    """Full, short, and nothing but the count."""
    perform(
        """
        maker: go to row
        maker: four
        program: single crochet in the next two stitches, increase in the next stitch
        maker: more words
        maker: short words
        maker: again
        maker: next
        silent: in the next
        maker: more words
        maker: only the count
        maker: next
        program: twelve of twenty-four
        silent: crochet
        maker: more words
        maker: full words
        maker: again
        program: single crochet
        """,
        Play(LIGHTHOUSE),
    )


def test_as_written_spelled_and_explained() -> None:
    """The pattern's own words, its letters, and how the stitch is made."""
    perform(
        """
        maker: go to part
        maker: tower
        maker: go to row
        maker: four
        maker: more words
        maker: as written
        program: written
        program: next eight stitches
        maker: more words
        maker: spell that
        program: s, c, space
        program: s, c, two, t, o, g
        maker: more words
        maker: explain that
        program: single crochet two together:
        program: loop
        """,
        Play(LIGHTHOUSE),
    )


def test_what_is_ahead_and_how_long_move_nothing() -> None:
    """Looking on is not going on."""
    perform(
        """
        maker: what's after this
        program: after this: round two
        maker: whole row
        program: six stitches
        maker: more words
        maker: how long
        program: by a usual pace
        place: round one
        """,
        Play(LIGHTHOUSE),
    )


@pytest.mark.parametrize(("minutes", "told"), [(30, True), (60, False), (0, False)])
def test_a_rest_is_hinted_at_a_row_end_and_not_before_its_time(minutes: int, told: bool) -> None:
    """After 35 minutes: hinted with 30 set, not with 60, never with 0; only when a row ends."""
    play = Play(LIGHTHOUSE, Tastes(rest_minutes=minutes))
    play.maker("row done")
    play.maker("row done")
    assert "rest" not in play.maker("next", after_s=35 * 60)
    assert ("short rest" in play.maker("row done")) is told
    if told:
        assert "somebody qualified" in play.answer
        assert "short rest" not in play.maker("row done")


def test_a_device_that_goes_is_told_once_and_its_return_too() -> None:
    """Keys go on working meanwhile."""
    play = Play(LIGHTHOUSE)
    gone = DeviceWent("microphone", "The microphone is gone; keys go on working.", 5.0)
    said = play.took(*respond(play.state, gone))
    assert "microphone is gone" in said
    assert "magic ring" in said, "the step that was being read is read after the news"
    assert play.took(*respond(play.state, gone)) == ""
    assert "round two" in play.key("space").lower()
    back = DeviceCame("microphone", 50.0)
    assert "is back" in play.took(*respond(play.state, back))
    assert play.took(*respond(play.state, back)) == ""


def test_every_request_is_on_a_key_of_its_own_and_has_its_phrase() -> None:
    """One hand or a foot is enough: no key twice, no request without one, each can be said."""
    keys = [words.key for words in TABLE]
    assert len(set(keys)) == len(keys)
    assert not set(keys) & set(PEDAL)
    answers = {Ask.NUMBER, Ask.WORD}
    assert {words.ask for words in TABLE} == set(Ask) - answers
    for words in TABLE:
        assert ask_of_key(words.key) is words.ask
    reachable = set(MAIN) | set(MORE) | {Ask.YES, Ask.NO, Ask.CARRY_ON}
    reachable |= {Ask.BY_ONE, Ask.BY_FIVE, Ask.BY_TEN}
    assert reachable == set(Ask) - answers
    phrases = phrases_of(tuple(words.ask for words in TABLE))
    assert len(set(phrases)) == len(phrases)


def test_a_key_for_nothing_is_told_and_moves_nothing() -> None:
    """A slip on the keyboard costs a word."""
    play = Play(LIGHTHOUSE)
    before = play.state.place
    assert "no key of mine" in play.took(*respond(play.state, KeyUnknown("%", 3.0)))
    assert play.state.place == before


def test_what_can_be_said_is_told_for_the_moment() -> None:
    """Each open question tells its own answers; with an attention word that is told too."""
    perform(
        """
        maker: what can i say
        program: next, again
        program: more words opens the rest
        key: g
        key: ?
        program: a number
        """,
        Play(LIGHTHOUSE),
    )
    play = Play(LIGHTHOUSE, Tastes(attention="captain"))
    assert "before each, say captain" in play.maker("captain what can i say").lower()


@pytest.mark.parametrize(
    "way",
    [
        (),
        ("go to row",),
        ("go to part",),
        ("check my count",),
        ("more words",),
        ("more words", "rip back"),
        ("more words", "mark this place"),
        ("more words", "note this"),
        ("more words", "materials"),
        ("more words", "my gauge"),
        ("more words", "count along"),
        ("finish for today",),
        ("pause",),
    ],
)
def test_no_request_is_answered_with_silence(way: tuple[str, ...]) -> None:
    """Whatever is asked wherever, there are words, or at least a sound; only hush is silent."""
    play = Play(LIGHTHOUSE)
    for words in way:
        play.maker(words)
    for words in TABLE:
        command = CommandGiven(Command(words.ask), play.now + 5, False)
        state, effects = respond(play.state, command)
        said = [talk(one.sayings, state) for one in effects if isinstance(one, Say)]
        sounds = [one for one in effects if isinstance(one, Chime)]
        assert said or sounds or words.ask is Ask.HUSH, words.ask
        assert all(one.strip() for one in said), words.ask


def test_a_named_row_is_done_without_its_side() -> None:
    """ "Set-up row done", since the side was said when it began."""
    text = (
        "Buoy Cowl\n\nCast on 12 sts.\nSet-up row (WS): P.\nRow 1 (RS): K1, ssk, k to end. (11)\n"
    )
    perform(
        """
        maker: row done
        program: set-up row, wrong side
        maker: row done
        program: set-up row done. you should have twelve stitches
        """,
        Play(plan_of(text)),
    )
