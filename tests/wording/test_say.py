"""Steps and rows of a plan as they are said, at three lengths."""

from __future__ import annotations

import pytest

from reader.counts.counted import CountedPart
from reader.counts.worked import MoveKind
from reader.plan.find import find_row, row_at, step_at
from reader.plan.place import Place
from reader.plan.step import Grain, Plan, PlanRow, Step
from reader.plan.unroll import make_plan
from reader.wording.say import (
    Length,
    counted,
    read_out,
    say_count,
    say_label,
    say_part,
    say_pass,
    say_passes,
    say_row,
    say_step,
    say_tally,
    say_written,
    spell,
)
from tests.plan.made import INC, buoy_plan, move, pattern, repeated, round_of
from tests.session.play import plan_of

PLAN = buoy_plan()


def at(
    number: int, step: int = 0, plan: Plan = PLAN, grain: Grain = Grain.GROUP
) -> tuple[Step, PlanRow]:
    """A step and its row, by the round's number."""
    place = find_row(plan, 0, number)
    assert place is not None
    there = Place(place.part, place.row, step)
    return step_at(plan, there, grain), row_at(plan, there)


@pytest.mark.parametrize(
    ("number", "length", "said"),
    [
        (4, Length.FULL, "Single crochet in the next two stitches, increase."),
        (4, Length.SHORT, "Two single crochet, increase."),
        (4, Length.COUNT_ONLY, "Four of twenty-four."),
        (5, Length.FULL, "Single crochet in each stitch around, that is twenty-four."),
        (5, Length.SHORT, "Single crochet around, that is twenty-four."),
        (2, Length.FULL, "Increase in each stitch around, six times."),
        (8, Length.FULL, "Single crochet two together, six times."),
        (1, Length.FULL, "Six single crochet in a magic ring."),
    ],
)
def test_a_step_at_three_lengths(number: int, length: Length, said: str) -> None:
    """What the hands do, and nothing about where that is."""
    assert say_step(*at(number), length) == said


def test_a_whole_row_folds_its_repeats() -> None:
    """Label, body with its times, and the count, said in full."""
    _, row = at(4)
    assert say_row(row) == (
        "Round four. Single crochet in the next two stitches, increase; six times. "
        "You should have twenty-four stitches."
    )
    assert say_row(row, Length.SHORT) == (
        "Round four. Two single crochet, increase; six times. You should have twenty-four stitches."
    )
    assert say_row(row, Length.COUNT_ONLY) == "Round four. You should have twenty-four stitches."


def test_a_repeat_among_others_has_its_times_in_front() -> None:
    """2 sc, inc, (4 sc, inc) x 5, 2 sc: nobody has to guess what is worked five times."""
    two = move("2 sc", 2, 2, times=2)
    inside = repeated(5, move("4 sc", 4, 4, times=4), INC)
    moves = (two, INC, *inside, two)
    plan = make_plan(pattern(CountedPart("Net", 1, (round_of(1, 30, 36, moves, "x"),))), "x")
    assert say_row(plan.parts[0].rows[0]) == (
        "Round one. Two single crochet, increase; then five times: four single crochet, increase; "
        "then two single crochet. You should have thirty-six stitches."
    )


def test_a_phrase_from_the_middle_of_a_repeat_says_what_is_left() -> None:
    """Two passes are done, four are left."""
    step, row = at(4, 2, grain=Grain.PHRASE)
    assert say_step(step, row) == "Single crochet in the next two stitches, increase; four times."


def test_a_changed_last_pass_is_said_apart() -> None:
    """Ending the last repeat otherwise."""
    body = (move("dc in next st"), move("ch 2", 0, 0, "", kind=MoveKind.CHAIN))
    last = (move("dc in next st"), move("ch 5", 0, 0, "", kind=MoveKind.CHAIN))
    moves = (*repeated(6, *body)[:10], *repeated(6, *last)[10:])
    plan = make_plan(pattern(CountedPart("Net", 1, (round_of(1, 6, 6, moves, "x"),))), "x")
    assert say_row(plan.parts[0].rows[0]) == (
        "Round one. Double crochet in the next stitch, chain two; five times; then double "
        "crochet in the "
        "next stitch, chain five. You should have six stitches."
    )


def test_places_are_said_with_the_step_where_a_row_begins() -> None:
    """The label once, the pass each time, and in full only the first pass."""
    assert read_out(*at(4)) == (
        "Round four. Single crochet in the next two stitches, increase. Pass one of six."
    )
    assert read_out(*at(4, 1)) == "Two single crochet, increase. Two of six."
    assert read_out(*at(4, 5)) == "Two single crochet, increase. Last of six."


def test_counts_passes_and_parts() -> None:
    """In full, and none where none is known."""
    step, row = at(4, 2)
    assert say_count(row) == "You should have twenty-four stitches."
    assert say_pass(step) == "Pass three of six."
    assert say_passes(step) == "Pass three of six."
    assert say_tally(step, row) == "Eight done, sixteen left, of twenty-four stitches."
    assert say_label(row) == "Round four."
    assert say_part(PLAN.parts[1]) == "Buoy, the second of two, worked as the first."
    assert say_part(PLAN.parts[2]) == "Finishing."
    assert counted(1) == "one stitch"
    assert counted(6, "sc") == "six single crochet"
    assert counted(5, "shells") == "five shells"


def test_a_remark_is_said_as_it_is() -> None:
    """No label, no count, no tally."""
    row = PLAN.parts[0].rows[5]
    assert (say_row(row), say_count(row), say_tally(row.groups[0], row)) == (
        "Change to red.",
        "",
        "",
    )


def test_the_unread_says_so() -> None:
    """In place of a guess."""
    unread = move("wobble the left anchor", 0, 0, "", kind=MoveKind.UNREAD)
    moves = (move("sc in next 10 sts", 10, 10, times=10), unread)
    plan = make_plan(pattern(CountedPart("Mat", 1, (round_of(1, 10, None, moves, "x"),))), "x")
    step, row = at(1, 1, plan)
    assert say_step(step, row) == "As written: wobble the left anchor."
    assert "I can't tell" in say_tally(step, row)


def test_as_written_and_spelt() -> None:
    """Speakable in the pattern's own order; letter by letter."""
    assert (
        say_written("2 sc in next st (12)")
        == "Two single crochet in the next stitch; twelve stitches."
    )
    assert spell("sc2tog") == "s, c, two, t, o, g"
    assert spell("FP *") == "capital F, capital P, space, star"


WORDS_A_SECOND = 170 / 60
"""The program's own speaking rate."""


def test_a_step_is_said_in_a_few_seconds() -> None:
    """No step of the buoy takes longer than six seconds to say at 170 words a minute."""
    said = [say_step(s, row) for part in PLAN.parts for row in part.rows for s in row.groups]
    assert max(len(words.replace("-", " ").split()) for words in said) <= 6 * WORDS_A_SECOND


def test_a_group_in_one_place_says_the_place_once() -> None:
    """(2 dc, ch 2, 2 dc) in next sp: the moves know the place, their words leave it out."""
    corner = (
        move("2 dc", 0, 2, "dc", 2)._replace(into="in corner sp"),
        move("ch 2", 0, 0, "ch", kind=MoveKind.CHAIN)._replace(into="in corner sp"),
        move("2 dc", 0, 2, "dc", 2)._replace(into="in corner sp"),
    )
    plan = make_plan(pattern(CountedPart("Net", 1, (round_of(1, 4, 4, corner, "x"),))), "x")
    step, row = at(1, 0, plan)
    assert say_step(step, row) == (
        "Two double crochet, chain two, two double crochet, all in the corner space."
    )


def test_runs_over_places_are_told_their_number() -> None:
    """ "2 sc in each st" over twelve stitches is worked twelve times, not twenty-four."""
    moves = (move("2 sc in each st around", 12, 24, "sc", 24),)
    plan = make_plan(pattern(CountedPart("Net", 1, (round_of(1, 12, 24, moves, "x"),))), "x")
    assert say_step(*at(1, 0, plan)) == "Two single crochet in each stitch around, twelve times."


def test_words_that_only_the_next_ones_complete_have_no_pause() -> None:
    """ "Slip stitch in the top of chain three" is one breath, however its words were taken."""
    text = "Shell Square\n\nUK terms\n\nSQUARE\nCh 4, join with ss to form a ring.\n"
    text += "Round 1: Ch 3 (counts as 1 tr), 11 tr in ring, ss in top of ch 3. (12 tr)\n"
    said = say_row(plan_of(text).parts[0].rows[-1])
    assert "slip stitch in the top of chain three" in said
