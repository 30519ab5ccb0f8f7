"""Plays on the place: marks with names, notes, ripping back, where am I, what was done last."""

from __future__ import annotations

from reader.commands.asked import command_of
from reader.session.effects import KeepSound, PlaySound, Say
from reader.session.events import CommandGiven, Ticked
from reader.session.state import Mode
from reader.session.transitions import respond
from tests.session.play import Play, demo, perform

LIGHTHOUSE = demo("harbour-lighthouse")


def test_a_mark_gets_a_name_and_is_gone_back_to_by_it() -> None:
    """Two marks: the maker says which; a name can be said once."""
    perform(
        """
        maker: row done
        maker: more words
        maker: mark this place
        program: mark one is here
        maker: heel
        program: it is called heel
        maker: row done
        maker: more words
        maker: lifeline here
        maker: no
        maker: row done
        place: round four
        maker: more words
        maker: back to the mark
        program: lifeline one, heel
        maker: heel
        program: back at heel
        place: round two
        away: 40
        program: two marks
        maker: more words
        maker: back to the mark
        maker: lifeline one
        place: round three
        """,
        Play(LIGHTHOUSE),
    )


def test_a_mark_can_be_left_without_a_name_by_working_on() -> None:
    """Next after the mark is next, not a name."""
    perform(
        """
        maker: more words
        maker: mark this place
        maker: next
        place: round two
        maker: more words
        maker: back to the mark
        program: back at mark one
        place: round one
        """,
        Play(LIGHTHOUSE),
    )


def test_ripping_back_to_a_mark_asks_and_says_what_is_on_hand() -> None:
    """The lifeline in round three: eighteen came of it, twelve go into it."""
    perform(
        """
        maker: row done
        maker: row done
        maker: more words
        maker: lifeline here
        maker: good place
        maker: row done
        maker: row done
        place: round five
        maker: more words
        maker: rip back
        maker: good place
        program: rip back to good place
        maker: yes
        program: twelve stitches to work into
        place: round three
        """,
        Play(LIGHTHOUSE),
    )


def test_where_am_i_tells_more_each_time_it_is_asked_soon() -> None:
    """Place; then the count; then how much of the part and the piece; later it begins anew."""
    perform(
        """
        maker: go to row
        maker: four
        maker: next
        maker: where am i
        program: round four. pass two of six
        silent: done
        maker: where am i
        program: four done, twenty left, of twenty-four
        silent: part one of eight
        maker: where am i
        program: three of six rounds of this part are done; part one of eight
        wait: 60
        maker: where am i
        silent: done
        """,
        Play(LIGHTHOUSE),
    )


def test_what_was_done_last_is_what_was_said_to_be_done() -> None:
    """A jump or a look back is nothing done."""
    perform(
        """
        maker: more words
        maker: what did we do last
        program: nothing has been done
        maker: next
        maker: more words
        maker: what did we do last
        program: six single crochet in a magic ring
        maker: row done
        maker: go to row
        maker: five
        maker: more words
        maker: what did we do last
        program: you finished base, round two
        maker: more words
        maker: start over again
        maker: yes
        maker: more words
        maker: what did we do last
        program: nothing has been done
        """,
        Play(LIGHTHOUSE),
    )


def test_a_note_is_read_again_when_its_row_is_reached() -> None:
    """Kept with its place, read on coming back, listed with part and row."""
    play = perform(
        """
        maker: row done
        maker: more words
        maker: note this
        maker: changed the hook
        program: note is kept: changed the hook
        maker: row done
        silent: changed the hook
        away: 30
        program: one note
        maker: go back
        program: your note here: changed the hook
        maker: more words
        maker: read my notes
        program: at base, round two: changed the hook
        """,
        Play(LIGHTHOUSE),
    )
    assert len(play.state.notes) == 1


def test_a_note_of_the_first_copy_is_read_with_the_second() -> None:
    """The second window is worked as the first, so what was noted there is told."""
    perform(
        """
        maker: go to part
        maker: first window
        maker: next
        maker: more words
        maker: note this
        maker: new ball
        maker: go to part
        maker: second window
        maker: next
        program: your note here: new ball
        """,
        Play(LIGHTHOUSE),
    )


def test_a_typed_note_may_hold_any_words() -> None:
    """What is no command is the note's text."""
    play = Play(LIGHTHOUSE)
    play.key("/")
    play.took(*respond(play.state, CommandGiven(command_of("use the blue hook"), 9.0, False)))
    assert play.state.notes[0].words == "use the blue hook"
    assert play.state.mode is Mode.STEP


def test_a_spoken_note_that_is_not_understood_is_kept_as_sound() -> None:
    """Its sound is asked for; when the time is over the work goes on."""
    play = Play(LIGHTHOUSE)
    play.maker("more words")
    play.maker("note this")
    sounds = [one for one in play.effects if isinstance(one, KeepSound)]
    assert [one.name for one in sounds] == ["note 1"]
    state, effects = respond(play.state, Ticked(play.now + sounds[0].seconds + 1))
    assert state.mode is Mode.STEP
    assert any(isinstance(one, Say) for one in effects)
    assert state.notes[0].words == ""


def test_a_note_begun_by_key_and_never_typed_leaves_nothing() -> None:
    """Working on without typing is no note."""
    play = Play(LIGHTHOUSE)
    play.key("/")
    play.key("space")
    assert play.state.notes == ()


def test_where_am_i_in_bigger_steps_still_tells_the_pass() -> None:
    """By phrase, in the middle of six passes: the work stands in the second of them."""
    perform(
        """
        maker: go to round five
        maker: next
        maker: more words
        maker: bigger steps
        maker: where am i
        program: round five. pass two of six
        """,
        Play(LIGHTHOUSE),
    )


def test_a_note_in_sound_is_played_when_its_row_is_reached() -> None:
    """It follows what is read there, once on reaching the row, and after coming back."""
    play = Play(LIGHTHOUSE)
    for words in ("row done", "more words", "note this"):
        play.maker(words)
    play.wait(60)
    assert "note is kept" in play.answer
    for arrive in (lambda: play.maker("go back") and play.maker("row done"), lambda: play.away(3)):
        arrive()
        assert "a note of yours in sound follows" in play.answer.lower()
        assert PlaySound("note 1") in play.effects
    play.maker("row done")
    assert PlaySound("note 1") not in play.effects
