"""Plays on checking a count: which row is meant, counts in mid-row, numbers that sound alike."""

from __future__ import annotations

from reader.session.breaths import breaths_for
from reader.session.state import Mode
from tests.session.play import Play, demo, perform, plan_of

LIGHTHOUSE = demo("harbour-lighthouse")


def test_a_count_taken_just_after_a_round_is_about_that_round() -> None:
    """Round three is said to be complete with eighteen; who then counts seventeen means it."""
    play = perform(
        """
        maker: go to round three
        maker: row done
        program: you should have eighteen
        maker: i have seventeen
        program: after round three. seventeen: there should be eighteen, so one too few
        program: shall i help to find where
        maker: yes
        program: to the end of the third pass. there should be nine
        maker: eight
        maker: three
        maker: five
        program: the slip is in the second pass
        place: round four
        """,
        Play(LIGHTHOUSE),
    )
    assert play.state.mode is Mode.STEP


def test_a_right_count_just_after_a_round_is_right() -> None:
    """Neither the next round's total nor a fault is spoken of."""
    perform(
        """
        maker: go to round three
        maker: row done
        maker: i have eighteen
        program: right: eighteen stitches, before round four
        silent: twenty-four
        """,
        Play(LIGHTHOUSE),
    )


def test_a_count_taken_once_the_row_can_be_worked_is_about_the_row() -> None:
    """Who works a round in one go and counts before saying so means that round."""
    play = perform("maker: go to round three\nmaker: row done", Play(LIGHTHOUSE))
    play.maker("i have twenty two", after_s=120)
    assert "Twenty-two: there should be twenty-four" in play.answer
    assert "after round" not in play.answer.lower()


def test_a_count_in_mid_row_is_told_right_so_far() -> None:
    """Three passes of three stitches are done and the fourth is read: nine, or twelve with it."""
    perform(
        """
        maker: go to round three
        maker: next
        maker: next
        maker: next
        maker: i have nine
        program: nine is right before this step; the round ends with eighteen
        maker: check my count
        maker: twelve
        program: twelve is right with this step
        maker: i have eighteen
        program: right: eighteen
        """,
        Play(LIGHTHOUSE),
    )


def test_a_count_that_sounds_like_another_is_said_back() -> None:
    """Thirteen and thirty both lie near twenty-four: it asks one, then the other."""
    perform(
        """
        maker: go to round four
        maker: i have thirty
        program: thirty, is that right? yes or no
        maker: no
        program: thirteen, is that right? yes or no
        maker: no
        program: as it was
        maker: i have thirty
        maker: yes
        program: thirty: there should be twenty-four, so six too many
        """,
        Play(LIGHTHOUSE),
    )


def test_counts_that_can_be_said_lie_near_those_that_can_be_meant() -> None:
    """In round four after round three: six to thirty-six; nothing far off."""
    play = perform("maker: go to round three\nmaker: row done", Play(LIGHTHOUSE))
    heard = breaths_for(play.state)
    assert "i have six" in heard
    assert "i have thirty six" in heard
    assert "i have fifty" not in heard


COASTER = """Kelp Coaster

COASTER
Rnd 1: 6 sc in a magic ring. (6)
Rnd 2: *sc in next 4 sts, inc in next st; rep from * around. (9)
"""


def test_where_the_words_do_not_add_up_the_end_is_still_told() -> None:
    """What is done by the words, and the count that the round should end with; no false rest."""
    perform(
        """
        maker: row done
        maker: how many
        program: done; the round should end with nine stitches
        silent: left
        """,
        Play(plan_of(COASTER)),
    )


def test_a_count_after_ripping_back_is_about_the_stitches_on_the_hook() -> None:
    """Ripped back to the start of round three: twelve are told, and twelve is right."""
    perform(
        """
        maker: go to round four
        maker: next
        maker: rip back to round three
        maker: yes
        program: you should have twelve stitches to work into
        maker: i have twelve
        program: right: twelve stitches, before round three
        maker: i have eleven
        program: after round two. eleven: there should be twelve, so one too few
        """,
        Play(LIGHTHOUSE),
    )


def test_a_count_can_be_told_while_a_remark_waits() -> None:
    """The round is complete and "change to blue" is read: the count is about that round."""
    text = "Kelp Mat\n\nMAT\nRnd 1: 6 sc in a magic ring. (6)\nRnd 2: inc in each st. (12)\n"
    text += "Change to blue.\nRnd 3: sc in each st around. (12)\n"
    perform(
        """
        maker: row done
        maker: row done
        program: change to blue
        maker: i have eleven
        program: after round two. eleven: there should be
        """,
        Play(plan_of(text)),
    )


def test_a_count_far_nearer_to_the_round_below_is_about_that_one() -> None:
    """Nineteen, however long after: one more than the eighteen of round three, not five too few of
    the twenty-four of round four."""
    play = perform("maker: go to round three\nmaker: row done", Play(LIGHTHOUSE))
    play.maker("i have nineteen", after_s=300)
    assert "After round three. Nineteen: there should be eighteen" in play.answer


def test_many_stitches_too_few_are_counted_once_more_before_anything_is_said_of_them() -> None:
    """Three of ten: nobody skips seven stitches unnoticed."""
    mat = (
        "Kelp Mat\n\nMAT\nRnd 1: 5 sc in a magic ring. (5)\nRnd 2: inc in next 4 sts, 2 sc. (10)\n"
    )
    perform(
        """
        maker: go to round two
        maker: i have three
        program: so seven too few. count once more
        """,
        Play(plan_of(mat)),
    )


def test_an_offer_of_help_does_not_stand_in_the_way() -> None:
    """Who says next, or row done, in place of yes or no goes on working; carry on leaves any
    question about a number."""
    perform(
        """
        maker: go to round four
        maker: i have twenty two
        program: shall i help
        maker: next
        program: two of six
        maker: i have twenty two
        maker: row done
        place: round five
        maker: check my count
        maker: carry on
        program: pass one of six
        place: round five
        """,
        Play(LIGHTHOUSE),
    )
