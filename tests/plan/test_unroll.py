"""Counted patterns become plans: parts, rows, steps, and counts that add up."""

from __future__ import annotations

from dataclasses import replace

from hypothesis import given
from hypothesis import strategies as st

from reader.counts.counted import CountedPart, Problem, Remark, Verdict
from reader.counts.worked import Move, MoveKind, Pass
from reader.plan.groups import cuts, phrase_starts
from reader.plan.step import RowKind
from reader.plan.unroll import MOST_COPIES, fingerprint, make_plan
from reader.text.span import Span
from tests.plan.made import SPAN, buoy, buoy_plan, move, pattern, remark, repeated, round_of
from tests.session.play import plan_of


def test_each_copy_is_a_part_and_finishing_comes_last() -> None:
    """ "Make 2" gives two parts, the second pointing to the first; finishing reads like rows."""
    plan = buoy_plan()
    told = [(part.name, part.copy, part.copies, part.first) for part in plan.parts]
    assert told == [("BUOY", 1, 2, None), ("BUOY", 2, 2, 0), ("Finishing", 1, 1, None)]
    assert [row.label for row in plan.parts[2].rows] == ["Step 1", "Step 2"]
    assert plan.parts[2].rows[0].kind is RowKind.FINISH


def test_remarks_stand_where_they_are_written() -> None:
    """The change of colour comes between rounds four and five, each sentence as a step of its
    own.
    """
    rows = buoy_plan().parts[0].rows
    words = [row.written if row.kind is RowKind.REMARK else row.label for row in rows]
    assert words == [
        "With white.",
        "Round 1",
        "Round 2",
        "Round 3",
        "Round 4",
        "Change to red.",
        "Round 5",
        "Round 6",
        "Stuff firmly.",
        "Place eyes between rounds 4 and 5.",
        "Round 7",
        "Round 8",
        "Fasten off, leaving a long tail.",
    ]


def test_places_of_steps_are_where_they_stand() -> None:
    """Every step knows its own place, in every copy."""
    for part, held in enumerate(buoy_plan().parts):
        for row, line in enumerate(held.rows):
            for step, group in enumerate(line.groups):
                assert (group.place.part, group.place.row, group.place.step) == (part, row, step)
                assert group.starts_row == (step == 0)
                assert group.ends_row == (step == len(line.groups) - 1)


def test_running_counts_reach_the_rows_count() -> None:
    """The last step ends with the row's count, each step begins where the one before ended."""
    for row in buoy_plan().parts[0].rows:
        if row.kind is not RowKind.WORK:
            continue
        done = 0
        for step in row.groups:
            assert step.done == done
            done = step.done_after
        assert done == row.count


def test_one_pass_is_one_step_and_the_repeat_one_phrase() -> None:
    """(sc in next 2, inc) x 6: six steps with their passes, one phrase."""
    row = buoy_plan().parts[0].rows[4]
    assert [(s.passes[0].number, s.passes[0].of) for s in row.groups] == [
        (n, 6) for n in range(1, 7)
    ]
    assert tuple(row.phrases) == (0,)
    assert [step.done_after for step in row.groups] == [4, 8, 12, 16, 20, 24]


def test_one_short_stitch_again_and_again_is_one_step() -> None:
    """sc2tog x 6 is said once."""
    row = buoy_plan().parts[0].rows[11]
    assert len(row.groups) == 1
    assert row.groups[0].done_after == 6


def test_a_long_row_is_cut_into_short_steps() -> None:
    """Six instructions outside a repeat become several steps; the turn goes with the last of
    them.
    """
    words = ("ch 1", "sc2tog", "sc in next 2 sts", "sc2tog", "sc in next 12 sts", "turn")
    moves = tuple(
        move(w, kind=MoveKind.TURN if w == "turn" else MoveKind.WORK, times=12 if "12" in w else 1)
        for w in words
    )
    found = cuts(moves)
    assert len(found) == 2
    assert moves[found[-1].end - 1].kind is MoveKind.TURN
    assert found[-1].start < len(moves) - 1
    assert max(cut.words for cut in found) <= 11


def test_what_cannot_be_read_stands_alone_and_keeps_its_words() -> None:
    """An unread stretch is a step of its own, marked, with the pattern's words; the aim stays
    known.
    """
    unread = move("wobble the left anchor", 0, 0, "", kind=MoveKind.UNREAD)
    moves = (
        move("sc in next 10 sts", 10, 10, times=10),
        unread,
        move("sc in next 14 sts", 14, 14, times=14),
    )
    part = CountedPart("Coaster", 1, (round_of(1, 30, 30, moves, "as it stands"),))
    row = make_plan(pattern(part), "x").parts[0].rows[0]
    assert [step.unread for step in row.groups] == [False, True, False]
    assert row.groups[1].written == "wobble the left anchor"
    assert {step.total for step in row.groups} == {30}


def test_stitches_that_do_not_add_up_have_no_total() -> None:
    """Where the moves make another number than the row's, the steps claim no total."""
    part = CountedPart(
        "Odd", 1, (round_of(1, 6, 9, (move("sc in next 6 sts", 6, 6, times=6),), "x"),)
    )
    assert make_plan(pattern(part), "x").parts[0].rows[0].groups[0].total is None


def test_a_cast_on_counts_where_it_is_the_row() -> None:
    """CO 80 makes the row of eighty; a chain that is worked into in the same row does not add to
    it.
    """
    start = move("CO 80 sts", 0, 80, "", kind=MoveKind.START)
    chain = move("ch 7", 0, 7, "", kind=MoveKind.START)
    rows = (
        round_of(1, 0, 80, (start,), "CO 80 sts"),
        round_of(2, 0, 6, (chain, move("sc in 2nd ch from hook and across", 6, 6, times=6)), "x"),
    )
    made = make_plan(pattern(CountedPart("Hat", 1, rows)), "x").parts[0].rows
    assert made[0].groups[-1].done_after == 80
    assert made[1].groups[-1].done_after == 6
    assert made[1].groups[0].done_after - made[1].groups[0].done in (0, 6)


def test_a_row_without_moves_is_read_as_written() -> None:
    """A row by rule that holds no moves is one step with its words and its count."""
    part = CountedPart("Band", 1, (round_of(3, 20, 20, (), "Work even for 3 inches"),))
    row = make_plan(pattern(part), "x").parts[0].rows[0]
    assert row.groups[0].written == "Work even for 3 inches"
    assert row.groups[0].done_after == 20


def test_a_problem_is_told_at_its_row() -> None:
    """The first fault stands with its row and among the plan's warnings; echoes do not."""
    fault = Problem(
        Verdict.TOTAL_DISAGREES,
        "Round 4: twenty-three printed.",
        Span(410, 420, 4),
        "BUOY",
        "Round 4",
    )
    echo = Problem(Verdict.ECHO, "Round 5 follows.", Span(510, 520, 5), "BUOY", "Round 5")
    plan = make_plan(buoy(1, (fault, echo)), "x")
    assert [row.label for row in plan.parts[0].rows if row.warning] == ["Round 4"]
    assert plan.warnings == ("Round 4: twenty-three printed.",)


def test_unread_lines_are_kept() -> None:
    """A line between rows that could not be read is a row of its own kind."""
    part = CountedPart("Oar", 1, (), (remark("unread", "mystery line"),))
    row = make_plan(pattern(part), "x").parts[0].rows[0]
    assert (row.kind, row.written, row.groups[0].unread) == (RowKind.UNREAD, "mystery line", True)


def test_a_slip_of_the_pen_makes_no_million_parts() -> None:
    """ "Make 1000000" is held to a number that can be worked."""
    assert len(make_plan(buoy(1_000_000), "x").parts) == MOST_COPIES + 1


def test_a_fingerprint_follows_words_not_spaces() -> None:
    """Wrapping a line otherwise keeps the progress, changing a number does not."""
    assert fingerprint("sc in\nnext 2") == fingerprint("sc in next  2 ")
    assert fingerprint("sc in next 2") != fingerprint("sc in next 3")


@st.composite
def rows_of_moves(draw: st.DrawFn) -> tuple[Move, ...]:
    """Rows of plain stitches, increases and decreases, in repeats (also nested) and outside."""
    words = st.sampled_from(
        [
            ("sc in next 2 sts", 2, 2),
            ("inc", 1, 2),
            ("sc2tog", 2, 1),
            ("ch 3", 0, 0),
            ("sc in each of next 30 sts", 30, 30),
        ]
    )
    moves: list[Move] = []
    for stretch in range(draw(st.integers(1, 4))):
        body = tuple(
            move(w, t, m, times=max(t, m))
            for w, t, m in draw(st.lists(words, min_size=1, max_size=6))
        )
        times = draw(st.integers(0, 5))
        if times and draw(st.booleans()):
            body = repeated(2, *body, at=1000 + stretch)
        moves += repeated(times, *body, at=stretch * 20) if times else body
    return tuple(moves)


@given(rows_of_moves())
def test_steps_cover_a_row_once_and_add_up(moves: tuple[Move, ...]) -> None:
    """Whatever the row: steps hold every move once, in order; done_after of the last is the row's
    count.
    """
    count = sum(one.makes for one in moves)
    part = CountedPart("Any", 1, (round_of(1, None, count, moves, "x"),))
    row = make_plan(pattern(part), "x").parts[0].rows[0]
    assert tuple(one for step in row.groups for one in step.moves) == moves
    assert row.groups[-1].done_after == count
    assert all(a.done_after == b.done for a, b in zip(row.groups, row.groups[1:], strict=False))
    assert sum(step.takes for step in row.groups) == sum(one.takes for one in moves)


@given(rows_of_moves())
def test_phrases_begin_at_steps_and_cover_the_row(moves: tuple[Move, ...]) -> None:
    """Phrase starts are step indexes, rising, from nought; no step outside a repeat mixes
    passes.
    """
    found = cuts(moves)
    starts = phrase_starts(found)
    assert starts[0] == 0
    assert list(starts) == sorted(set(starts))
    assert starts[-1] < len(found)
    for cut in found:
        inside = {tuple(p.number for p in m.passes) for m in moves[cut.start : cut.end]}
        assert len(inside) == 1 or len({m.words for m in moves[cut.start : cut.end]}) == 1


def test_passes_of_a_nested_repeat_are_told_outermost_first() -> None:
    """[(2 dc, ch 1) 3 times, sk 2] 4 times: the first step is pass 1 of 4, and in it 1 of 3."""
    inner = repeated(3, move("2 dc in next st", 1, 2), move("ch 1", 0, 0), at=100)
    moves = repeated(4, *inner, move("sk 2", 2, 0), at=50)
    first = cuts(moves)[0]
    assert [(p.number, p.of) for p in first.passes] == [(1, 4), (1, 3)]
    assert isinstance(first.passes[0], Pass)
    assert SPAN.line == 1


def test_finishing_after_the_last_part_is_done_once() -> None:
    """Words after two windows are for the whole piece, not for each window."""
    notes = (remark("note", "Fasten off."), remark("finishing", "Sew the windows on."))
    part = CountedPart("Window", 2, (round_of(1, 0, 3, (move("3 sc", 0, 3),), "3 sc"),), notes)
    plan = make_plan(replace(pattern(part), finishing=()), "x")
    assert [(held.name, len(held.rows)) for held in plan.parts] == [
        ("Window", 2),
        ("Window", 2),
        ("Finishing", 1),
    ]


def test_rows_of_the_making_up_are_worked_once() -> None:
    """A neckband behind two sleeves is for the whole piece, sewing and pressing in their order."""
    plan = plan_of(JERSEY)
    assert [(held.name, held.copies) for held in plan.parts] == [
        ("SLEEVES", 2),
        ("SLEEVES", 2),
        ("Making up", 1),
    ]
    told = [row.written for row in plan.parts[-1].rows]
    assert told[0].startswith("Join the shoulder")
    assert told[-2:] == ["Sew side seams.", "Press lightly."]


JERSEY = """Pier Jersey

SLEEVES (make 2)
Cast on 24 sts.
Row 1: *K2, p2; rep from * to end. (24)
Row 2: *K2, p2; rep from * to end. (24)
Bind off all sts.

Making up
Join the shoulder seam.
With 4 mm needles, pick up and knit 60 sts around neck.
Row 1: *K2, p2; rep from * to end. (60)
Bind off in rib.
Sew side seams.
Press lightly.
"""


def test_lists_keep_their_lines() -> None:
    """A remark joined into one line is a list again where the maker's text has lines."""
    text = "4 mm hook\nStitch marker\n"
    joined = Remark("materials", "4 mm hook Stitch marker", Span(0, 24, 1))
    plan = make_plan(replace(pattern(), materials=(joined,)), text)
    assert [item.text for item in plan.gather] == ["4 mm hook", "Stitch marker"]


CLOTH = """Fell Cloth

Abbreviations
ch = chain; tr = treble

CLOTH
Ch 14.
Row 1: 1 tr in 4th ch from hook, 1 tr in each ch to end. Turn. (12 tr)
Row 2: Ch 3, miss first st, 1 tr in each st to end. Turn. (12 tr)
"""


def test_a_turning_chain_that_counts_is_counted_where_it_is_made() -> None:
    """The running count of each row ends with its total: the turning chain of three is a stitch (UK
    trebles, common practice of the trade's leaflets)."""
    for row in plan_of(CLOTH).parts[0].rows[1:]:
        assert [step.total for step in row.groups] == [12] * len(row.groups)
        assert row.groups[-1].done_after == 12
    assert plan_of(CLOTH).parts[0].rows[2].groups[0].done_after == 1


def test_rows_that_take_turns_are_not_called_alike() -> None:
    """ "Rep last 2 rows until" are decrease rows and purl rows by turns."""
    text = "Reed Cap\n\nCast on 13 sts.\nRow 1: K1, ssk, k to last 3 sts, k2tog, k1. (11 sts)\n"
    text += "Row 2: P. (11 sts)\nRep last 2 rows until 5 sts remain.\nBind off all sts.\n"
    told = [one.kind for row in plan_of(text).parts[0].rows for one in row.notices]
    assert "alike" not in told


def test_words_below_to_make_up_are_finishing() -> None:
    """They are for the whole piece, not for the second band they stand behind."""
    text = (
        "Reed Vest\n\nBAND (make 2)\nCh 12.\nRow 1: Sc in 2nd ch from hook and in each ch. (11)\n"
    )
    text += (
        "Row 2: Ch 1, turn, sc in each st. (11)\n\nTO MAKE UP\nJoin the sides.\nSew on buttons.\n"
    )
    plan = plan_of(text)
    assert [(part.name, part.copies) for part in plan.parts][-1] == ("Finishing", 1)
    assert [row.written for row in plan.parts[-1].rows] == ["Join the sides.", "Sew on buttons."]


SOCKLET = """Pier Socklet

Cast on 24 sts. Join in the round.
Round 1: *K2, p2; rep from * to end. (24 sts)
Knit 4 rounds.
Bind off 3 sts at beg of next 2 rows. (18 sts)
"""


def test_rows_asked_for_together_are_read_one_at_a_time() -> None:
    """ "Knit 4 rounds" is four rounds of "knit this round": read as it stands at each it would be
    sixteen. That they are alike is told once."""
    rows = plan_of(SOCKLET).parts[0].rows
    many = [row for row in rows if row.written.startswith("Knit 4")]
    assert [row.groups[0].written for row in many] == ["Knit this round"] * 4
    told = [notice.text for row in many for notice in row.notices if notice.kind == "alike"]
    assert told == ["The next 4 rounds are alike."]
    off = [row for row in rows if row.written.startswith("Bind off")]
    assert [row.groups[0].written for row in off] == ["Bind off 3 sts at beg of this row"] * 2
    assert [row.count for row in off] == [21, 18]


def test_a_count_of_stitches_is_not_called_shells() -> None:
    """Eight shells of five with eight single crochet are forty-eight stitches, not so many shells;
    where shells alone are counted they are named."""
    text = "Surf Mat\n\nMAT\nRnd 1: 16 sc in a magic ring. (16)\n"
    text += "Rnd 2: *5 dc in next st, sc in next st; rep from * around. (8 shells, 8 sc)\n"
    last = plan_of(text).parts[0].rows[-1]
    assert (last.count, last.of) == (48, "")
