"""Plays on coming back: the same evening, the next day, after weeks; and on what a slip costs."""

from __future__ import annotations

from reader.session.effects import Save
from tests.session.play import Play, demo, perform


def away_from_the_tower(days: int) -> str:
    """What is said on coming back to round two of the tower, with a mark and a note there."""
    play = Play(demo("harbour-lighthouse"))
    for _ in range(9):
        play.maker("row done")
    for words in ("mark this place", "neck edge", "note this", "new ball"):
        if words in ("mark this place", "note this"):
            play.maker("more words")
        play.maker(words)
    return play.away(days).lower()


def test_the_same_evening_only_the_place() -> None:
    """No dates, nothing about last time; the note of the row is read as always."""
    said = away_from_the_tower(0)
    assert "tower. round two" in said
    assert "new ball" in said
    assert "since you were here" not in said
    assert "you use" not in said


def test_the_next_day_what_was_done_last_and_what_should_be_on_hand() -> None:
    """Yesterday, the last row, the stitches to count before going on."""
    said = away_from_the_tower(1)
    assert "yesterday" in said
    assert "last you finished tower, round one" in said
    assert "you should have thirty stitches to work into" in said
    assert "you use" not in said


def test_after_weeks_everything() -> None:
    """Days, hook, parts done, marks and notes, how much of the part, then as the next day."""
    said = away_from_the_tower(40)
    for words in (
        "forty days since",
        "four millimetre crochet hook",
        "one part is done, of eight",
        "one mark",
        "one note",
        "two of seventeen rounds of this part are done",
        "last you finished tower, round one",
        "thirty stitches to work into",
    ):
        assert words in said


def test_a_wrong_count_is_told_with_the_likely_slip_and_what_it_does_to_later_rounds() -> None:
    """Twenty-two of twenty-four: two increases missed; the next round would end two short."""
    perform(
        """
        maker: go to round four
        maker: i have twenty two
        program: two too few
        program: two increases were missed
        program: go back and mend
        program: the next round then ends with twenty-eight in place of thirty
        program: shall i help to find where
        maker: no
        place: round four
        """,
        Play(demo("harbour-lighthouse")),
    )


def test_counting_along_that_was_left_is_not_taken_up_again() -> None:
    """Left by no, closed without a further word: next moves on coming back."""
    play = Play(demo("harbour-lighthouse"))
    for words in ("more words", "count along", "one", "no"):
        play.maker(words)
    assert Save() in play.effects


def test_ripping_back_is_taken_back_by_one_word() -> None:
    """A move that was said yes to by mistake costs one word."""
    perform(
        """
        maker: row done
        maker: row done
        maker: row done
        maker: rip back to round one
        maker: yes
        place: round one
        maker: undo that
        place: round four
        """,
        Play(demo("harbour-lighthouse")),
    )
