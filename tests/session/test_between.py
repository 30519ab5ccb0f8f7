"""Where the ear takes an answer for either of two, the program asks which, once."""

from __future__ import annotations

from reader.commands.numbers import read_number, say_figures
from reader.session.listening import phrases_for
from tests.session.play import Play, demo, perform, plan_of

TALL = "Mast\n\nMAST\nRnd 1: 6 sc in a magic ring. (6)\n" + "".join(
    f"Rnd {number}: sc in each st around. (6)\n" for number in range(2, 95)
)


def test_numbers_can_be_said_figure_by_figure() -> None:
    """And come back as the same number."""
    for number in (*range(10, 131), 113, 509, 999):
        assert read_number(say_figures(number)) == number
    assert read_number("twenty three") == 23
    assert read_number("five") == 5


def test_between_two_numbers_the_figures_decide() -> None:
    """Nineteen or ninety; the answer is a number as any, and said back where it must be."""
    play = perform(
        """
        maker: go to row
        unclear: ninety / nineteen
        program: Ninety, or nineteen? Say nine zero, or one nine.
        """,
        Play(plan_of(TALL)),
    )
    assert {"ninety", "nineteen", "nine zero", "one nine", "the first", "no"} <= set(
        phrases_for(play.state)
    )
    assert "eighty" not in phrases_for(play.state)
    perform(
        """
        maker: again
        program: Ninety, or nineteen? Say nine zero, or one nine.
        maker: one nine
        program: round nineteen, is that right
        maker: yes
        place: round nineteen
        maker: go to row
        unclear: eighty / eight
        program: Eighty, or eight? Say the first, or the second.
        maker: the second
        place: round eight
        maker: go to row
        unclear: eighty / eight
        maker: no
        program: as it was
        place: round eight
        """,
        play,
    )
    assert not play.state.between


def test_between_two_names() -> None:
    """By their places in the question; a command among them too."""
    perform(
        """
        maker: more words
        maker: mark this place
        unclear: edge / head
        program: Edge, or head? Say the first, or the second.
        maker: the second
        program: it is called head
        """,
        play := Play(demo("harbour-lighthouse")),
    )
    assert play.state.marks[-1].name == "head"


def test_asked_once_then_the_question_is_put_otherwise() -> None:
    """Not sure again: all that can be answered; then the keys, as ever."""
    play = perform(
        """
        maker: go to row
        unclear: ninety / nineteen
        unclear: ninety / nineteen
        program: say a number from one to ninety four
        unclear: ninety / nineteen
        program: every command is also on a key
        """,
        Play(plan_of(TALL)),
    )
    assert "eighty" in phrases_for(play.state)


def test_between_two_commands_there_is_only_the_sound() -> None:
    """While a step waits nothing is asked, so no words stand between two stitches."""
    perform("unclear: slower / louder\nquiet:", Play(demo("harbour-lighthouse")))
