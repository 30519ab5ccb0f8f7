"""Plays on the whole make: what to gather, gauge, yarn, copies, finishing, the size alone."""

from __future__ import annotations

import re

from reader.plan.step import RowKind
from reader.session.effects import Saying
from reader.session.progress import from_plain, to_plain
from reader.wording.talk import sentence_of
from tests.session.play import Play, demo, perform, plan_of

LIGHTHOUSE = demo("harbour-lighthouse")
SMALL, LARGE = demo("mooring-pennant", 0), demo("mooring-pennant", 1)


def test_things_to_gather_are_read_and_ticked_off_by_voice() -> None:
    """Yes ticks, no leaves it; what is missing is said at the end and asked about next time."""
    play = perform(
        """
        maker: more words
        maker: materials
        program: five things to gather
        program: blue
        maker: yes
        program: white
        maker: no
        program: four millimetre needles
        maker: yes
        program: stitch marker
        maker: again
        program: stitch marker
        maker: explain that
        program: the pattern says: stitch marker
        maker: yes
        program: tapestry needle
        maker: yes
        program: one thing is missing
        program: white
        away: 1
        maker: more words
        maker: materials
        program: one thing to gather
        program: white
        maker: yes
        program: you have everything
        maker: more words
        maker: materials
        program: everything on the list
        """,
        Play(SMALL),
    )
    assert len(play.state.ticked) == 5


def test_the_list_can_be_left_in_the_middle() -> None:
    """Carry on leaves the list and reads the step; what was ticked stays ticked."""
    play = perform(
        """
        maker: more words
        maker: materials
        maker: yes
        maker: carry on
        program: cast on
        maker: next
        place: row one
        """,
        Play(SMALL),
    )
    assert play.state.ticked == {0}


def test_a_gauge_is_asked_for_and_told_what_it_means() -> None:
    """Too many stitches over ten centimetres are too small and ask for larger needles: 22 wanted,
    24 found is one US size up from 4 mm, 4.5 mm (sizes: Craft Yarn Council list; the rule "more
    stitches than wanted, larger needles" is common practice, no source)."""
    perform(
        """
        maker: more words
        maker: my gauge
        program: twenty-two stitches and thirty rows
        program: how many have you
        maker: twenty two
        program: your gauge fits
        maker: more words
        maker: my gauge
        maker: twenty four
        program: too small
        program: larger
        program: four point five millimetres
        program: narrower
        program: the five stitches here measure about two centimetres
        """,
        Play(SMALL),
    )


def test_yarn_is_told_by_colour_and_by_weight() -> None:
    """Nothing worked: all of the 60 grams of white are still to go; later less."""
    play = perform(
        """
        maker: more words
        maker: how much yarn
        program: the white is not begun. By the pattern's amount, about sixty grams to go
        maker: go to part
        maker: roof
        maker: more words
        maker: how much yarn
        program: of the grey, about three quarters is worked
        program: the white is all worked
        program: how many grams of the red are left
        maker: five
        program: the red
        maker: more words
        maker: how much yarn
        maker: no
        program: as it was
        """,
        Play(LIGHTHOUSE),
    )
    assert "the white is not begun" not in play.answer.lower()


def test_a_second_copy_is_worked_as_the_first_and_has_a_place_of_its_own() -> None:
    """ "Make 2": each copy is named; going to the second leaves the first alone."""
    perform(
        """
        maker: go to part
        program: first window
        maker: second window
        program: the second of two, worked as the first
        place: second
        maker: next
        place: second
        place: row one
        away: 3
        program: window, the second of two
        """,
        Play(LIGHTHOUSE),
    )


def test_finishing_is_read_like_rows_to_the_very_end() -> None:
    """Sewing up is read step by step; after the last the piece is kept as finished."""
    play = perform(
        """
        maker: go to part
        maker: finishing
        program: sew the base
        maker: next
        program: gravel
        maker: where am i
        program: step two
        """,
        Play(LIGHTHOUSE),
    )
    while not play.state.finished:
        play.maker("next")
    assert "whole piece is done" in play.answer
    kept = from_plain(LIGHTHOUSE, to_plain(play.state))
    assert kept is not None
    assert kept.finished
    assert "is finished" in play.away(2)


def test_only_the_chosen_size_is_ever_said() -> None:
    """Every row of the large pennant is read, and none of the small one's own numbers are in it.

    The counts of the two sizes differ by two in every row of the pennant."""
    play = Play(LARGE)
    for part, held in enumerate(LARGE.parts[:1]):
        for at, row in enumerate(held.rows):
            if row.kind is not RowKind.WORK:
                continue
            place = row.groups[0].place
            said = sentence_of(Saying("row", place), play.state).lower()
            small = SMALL.parts[part].rows[at].count
            if row.written.startswith("BO all"):
                assert (row.count, small) == (0, 0)
                assert "no stitches are left" in said
                continue
            assert row.count == (small or 0) + 2
            assert f"({row.count})" not in said
            assert "bracket" not in said
            told = re.search(r"you should have ([a-z-]+) stitches", said)
            assert told, said


def test_what_the_pattern_says_first_is_not_lost() -> None:
    """Notes before the first part are read on request; what stands under its heading is said."""
    play = Play(LIGHTHOUSE)
    assert "with grey" in play.answer.lower()
    perform(
        """
        maker: more words
        maker: opening notes
        program: worked in a spiral
        silent: with grey
        """,
        play,
    )


SPARROW = """Dock Sparrow

WINGS (make 2)
R1: 5 sc in a magic ring. (5)
R2: inc in each st. (10)

FEET (make 2)
R1: 4 sc in a magic ring. (4)

ASSEMBLY
Sew the wings between R1 and R2 of the body.
"""


def test_one_copy_is_called_by_the_name_of_one() -> None:
    """ "Wings, make 2" are the first wing and the second; rows named in sewing up are rounds."""
    perform(
        """
        program: wing, the first of two
        maker: go to part
        program: one, first wing; two, second wing; three, first foot
        maker: second foot
        program: foot, the second of two, worked as the first
        maker: go to part
        maker: finishing
        program: between round one and round two
        """,
        Play(plan_of(SPARROW)),
    )


SOCKLETS = """Pier Socklets

CUFF
Cast on 24 sts. Join in the round.
Round 1: *K2, p2; rep from * to end. (24 sts)

TOE
Round 1: *K2tog, k10; rep from * to end. (22 sts)

Make a second sock the same.
"""


def test_the_second_sock_is_worked_as_the_first_in_all_its_parts() -> None:
    """Cuff and toe, then cuff and toe again; a third is never asked for."""
    perform(
        """
        program: cuff, the first of two
        maker: go to part
        program: one, first cuff; two, first toe; three, second cuff; four, second toe
        maker: first toe
        maker: row done
        program: make a second sock the same
        maker: next
        program: cuff, the second of two, worked as the first
        maker: go to part
        maker: second toe
        maker: row done
        program: the whole piece is done
        """,
        Play(plan_of(SOCKLETS)),
    )


def test_a_gauge_in_rounds_is_read_and_not_denied() -> None:
    """ "First 3 rounds = 3 inches across" can be measured, not reckoned from a count."""
    text = "Buoy Hat\n\nGAUGE: First 3 rounds = 3 in diameter\n\n"
    text += "HAT\nRnd 1: 6 sc in a magic ring. (6)\n"
    perform(
        """
        maker: more words
        maker: my gauge
        program: first three rounds make three
        program: measure that
        maker: next
        """,
        Play(plan_of(text)),
    )
