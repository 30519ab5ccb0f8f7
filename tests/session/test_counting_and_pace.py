"""Plays on counting: count along, pace aloud, wrong counts, unclear words, one-word undo."""

from __future__ import annotations

from reader.commands.asked import command_of
from reader.session.effects import Chime, Say, StopTalking
from reader.session.events import CommandGiven
from reader.session.listening import phrases_for
from reader.session.transitions import respond
from tests.session.play import Play, demo, perform, plan_of

LIGHTHOUSE = demo("harbour-lighthouse")


def test_counting_aloud_notices_a_number_left_out_and_one_said_twice() -> None:
    """The tally follows the maker, and says what it had expected."""
    perform(
        """
        maker: more words
        maker: count along
        program: counting along from zero
        maker: one
        quiet:
        maker: three
        program: you said three; i had expected two
        maker: three
        program: three was said already
        maker: four
        quiet:
        maker: five
        maker: six
        program: round complete. you should have six
        program: round two
        place: round two
        """,
        Play(LIGHTHOUSE),
    )


def test_one_word_counts_every_five_or_ten() -> None:
    """By fives: thirty stitches are six words."""
    play = perform(
        """
        maker: go to row
        maker: six
        maker: more words
        maker: count along
        maker: every ten
        program: every ten stitches
        maker: every five
        program: every five stitches
        maker: next
        maker: next
        maker: undo that
        maker: next
        maker: fifteen
        maker: how many
        program: fifteen counted, fifteen left, of thirty
        away: 0
        program: every five stitches
        maker: next
        maker: next
        quiet:
        maker: next
        program: round complete. you should have thirty
        """,
        Play(LIGHTHOUSE),
    )
    assert "next" in phrases_for(play.state)


def test_the_row_is_said_to_be_due_once_and_only_when_asked_for() -> None:
    """Steps of six seconds a stitch are learned; then the row is called once, softly."""
    play = Play(LIGHTHOUSE)
    play.maker("more words")
    play.maker("keep time")
    for _ in range(8):
        play.maker("next", after_s=18)
    play.wait(1)
    assert play.wait(1) == ""
    said, softly = [], []
    for _ in range(12):
        said.append(play.wait(20))
        softly += [one.soft for one in play.effects if isinstance(one, Say)]
    told = [words for words in said if words]
    assert len(told) == 1
    assert "about done" in told[0]
    assert softly == [True]


def test_pace_aloud_is_silent_while_paused_and_when_it_is_off() -> None:
    """Nothing is said of time in a pause, nor without being asked."""
    for words in (("pause",), ()):
        play = Play(LIGHTHOUSE)
        if words:
            play.maker("more words")
            play.maker("keep time")
        for _ in range(8):
            play.maker("next", after_s=18)
        for one in words:
            play.maker(one)
        assert [play.wait(60) for _ in range(10)] == [""] * 10


def test_a_wrong_count_is_looked_for_by_halves() -> None:
    """Five too few of thirty in six passes of five: found in two counts to be the fifth pass."""
    perform(
        """
        maker: go to row
        maker: five
        maker: check my count
        maker: twenty five
        program: five too few
        program: a pass was left out
        program: help to find where
        maker: yes
        program: to the end of the third pass. there should be fifteen
        maker: fifteen
        program: to the end of the fourth pass. there should be twenty
        maker: twenty
        program: fifth pass
        maker: twenty
        program: the slip is in the fifth pass
        program: mend
        maker: next
        program: two of six
        """,
        Play(LIGHTHOUSE),
    )


def test_a_right_count_and_a_declined_search_go_on() -> None:
    """Right is said in a word; no to the search leaves all as it was."""
    perform(
        """
        maker: check my count
        maker: six
        program: right: six
        maker: go to row
        maker: four
        maker: check my count
        maker: twenty three
        maker: no
        program: as it was
        place: round four
        maker: check my count
        maker: again
        program: how many stitches have you
        """,
        Play(LIGHTHOUSE),
    )


def test_where_nothing_can_be_counted_nothing_is_asked() -> None:
    """A foundation chain that closes to a ring has no count to compare."""
    perform(
        """
        maker: go to part
        maker: tower
        maker: check my count
        program: can't tell
        maker: next
        """,
        Play(LIGHTHOUSE),
    )


def test_an_open_question_is_put_in_other_words_then_told_by_key_then_silence() -> None:
    """First a sound, then the question otherwise, then the keys, then nothing till understood."""
    play = perform(
        """
        maker: go to row
        program: which round
        unclear: four
        quiet:
        unclear: four
        program: a number from one to six
        unclear: four
        program: on a key
        unclear: four
        quiet:
        unclear: four
        quiet:
        """,
        Play(LIGHTHOUSE),
    )
    assert not any(isinstance(one, Chime) for one in play.effects)
    play.maker("four")
    play.unclear("next")
    assert Chime("not sure") in play.effects


def test_a_move_is_taken_back_by_one_word_for_ten_seconds() -> None:
    """Either "undo that" or "no"; after that neither moves anything."""
    for words, key in (("undo that", "z"), ("", "n")):
        play = Play(LIGHTHOUSE)
        play.maker("next")
        said = play.maker(words, 9.0) if words else play.key(key, 9.0)
        assert "taken back" in said.lower()
        play.maker("next")
        assert "no move to take back" in play.key(key, 11.0)
        assert "round two" in play.place().lower()


def test_any_command_interrupts_what_is_being_said() -> None:
    """While the program speaks, each phrase that can be heard silences it first."""
    for words in phrases_for(Play(LIGHTHOUSE).state):
        play = Play(LIGHTHOUSE)
        assert play.state.talking
        play.maker(words)
        kinds = [type(one) for one in play.effects]
        assert StopTalking in kinds, words
        if Say in kinds:
            assert kinds.index(StopTalking) < kinds.index(Say), words


def test_words_that_are_no_command_are_not_guessed() -> None:
    """Typed nonsense moves nothing and is told so."""
    play = Play(LIGHTHOUSE)
    place = play.state.place
    told = play.took(*respond(play.state, CommandGiven(command_of("wobble"), 3.0, False)))
    assert "i don't know that" in told.lower()
    assert play.state.place == place
    play.maker("next")


TALL = "Mast\n\nMAST\nRnd 1: 6 sc in a magic ring. (6)\n" + "".join(
    f"Rnd {number}: sc in each st around. (6)\n" for number in range(2, 41)
)


def test_a_row_number_that_sounds_like_another_is_said_back() -> None:
    """Thirteen or thirty: both exist, so it asks one, then the other; a number without a double is
    gone to."""
    perform(
        """
        maker: go to row
        maker: thirteen
        program: round thirteen, is that right
        maker: no
        program: round thirty, is that right
        maker: no
        place: round one
        maker: go to row
        maker: thirty
        maker: no
        program: round thirteen, is that right
        maker: yes
        place: round thirteen
        maker: go to row
        maker: thirty
        maker: yes
        place: round thirty
        maker: go to row
        maker: twelve
        place: round twelve
        maker: more words
        maker: rip back
        """,
        play := Play(plan_of(TALL)),
    )
    assert "twelve" in phrases_for(play.state)
    assert "thirteen" not in phrases_for(play.state)


def test_a_number_may_come_with_its_request() -> None:
    """Typed in one go: "go to row twelve", "I have five stitches", "rip back to round three"."""
    play = Play(plan_of(TALL))

    def typed(words: str) -> str:
        event = CommandGiven(command_of(words), play.now + 5, False)
        return play.took(*respond(play.state, event)).lower()

    typed("go to row twelve")
    assert "round twelve" in play.place().lower()
    assert "one too few" in typed("i have five stitches")
    assert "there is no round ninety" in typed("go to row 90")
    assert "still ahead" in typed("rip back to 30")
    assert "rip back to the start of round three" in typed("rip back to round 3")
    typed("yes")
    assert "round three" in play.place().lower()


def test_whole_rows_done_teach_the_pace_too() -> None:
    """Who says row done at each round's end is told the time left by their own pace; rounds that
    are only leafed through teach nothing."""
    slow, leafed = Play(LIGHTHOUSE), Play(LIGHTHOUSE)
    for _ in range(5):
        stitches = slow.state.plan.parts[0].rows[slow.state.place.row].count or 0
        slow.maker("row done", after_s=8.0 * stitches)
        leafed.maker("row done", after_s=1.0)
    for play in (slow, leafed):
        play.maker("more words")
        play.maker("how long")
    assert "your pace yet" in leafed.answer
    assert "your pace yet" not in slow.answer
    assert slow.answer.startswith("About four minutes for this round")
