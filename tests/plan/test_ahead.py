"""Notices come before the row that they affect, never after."""

from __future__ import annotations

from reader.counts.counted import CountedPart
from reader.plan.step import PlanRow, RowKind
from reader.plan.unroll import make_plan
from tests.plan.made import BUOY_ROUNDS, buoy_plan, move, pattern, remark, round_of


def told(rows: tuple[PlanRow, ...]) -> list[tuple[str, str, int]]:
    """(label, kind of notice, rows ahead) for every notice in order."""
    return [(row.label, n.kind, n.rows_ahead) for row in rows for n in row.notices]


def test_a_colour_change_is_named_two_rounds_and_one_round_before() -> None:
    """Red begins with round five, so rounds three and four say so."""
    rows = buoy_plan().parts[0].rows
    colours = [one for one in told(rows) if one[1] == "colour"]
    assert colours == [("Round 3", "colour", 2), ("Round 4", "colour", 1)]
    texts = [n.text for row in rows for n in row.notices if n.kind == "colour"]
    assert texts[0] == "Colour change ahead: red comes in 2 rounds."
    assert [row.colour for row in rows if row.kind is RowKind.WORK] == ["white"] * 4 + ["red"] * 4


def test_stripes_of_one_row_are_named_once_each() -> None:
    """Where every row changes, only the row before says so."""
    rows = tuple(round_of(n, 10, 10, (), f"With {c}, knit.") for n, c in enumerate("ABAB", start=1))
    made = make_plan(pattern(CountedPart("Scarf", 1, rows)), "x").parts[0].rows
    assert all(ahead == 1 for _, kind, ahead in told(made) if kind == "colour")
    assert sum(kind == "colour" for _, kind, _ in told(made)) == 3


def test_filling_is_named_before_the_piece_closes() -> None:
    """Two rounds before six stitches are left, with the eyes."""
    assert ("Round 6", "filling", 2) in told(buoy_plan().parts[0].rows)


def test_the_first_decreases_the_tail_and_the_last_round() -> None:
    """Round five is told of the decreases of round six; round eight is the last and needs a long
    tail.
    """
    notices = told(buoy_plan().parts[0].rows)
    assert ("Round 5", "decreases", 1) in notices
    assert ("Round 8", "tail", 1) in notices
    assert ("Round 8", "last", 0) in notices


def test_at_the_same_time_is_told_with_the_row_before_the_words() -> None:
    """Words between rows three and four reach the maker at row three, and again at row four."""
    rows = tuple(
        round_of(n, 40, 40, (move("k", 40, 40, "k", 40),), "k", False) for n in range(1, 7)
    )
    note = remark("note", "At the same time, dec 1 st each end every 4th row.", 3)
    made = make_plan(pattern(CountedPart("Sail", 1, rows, (note,))), "x").parts[0].rows
    found = [one for one in told(made) if one[1] == "same time"]
    assert found == [("Row 3", "same time", 1), ("Row 4", "same time", 0)]


def test_a_length_is_told_as_a_length() -> None:
    """Measure, do not count: at the row itself and one row earlier."""
    rows = (
        *BUOY_ROUNDS[:2],
        round_of(3, 12, 12, (), "Work even until the cord measures 8 inches"),
    )
    made = make_plan(pattern(CountedPart("Cord", 1, rows)), "x").parts[0].rows
    assert [one for one in told(made) if one[1] == "measure"] == [
        ("Round 2", "measure", 1),
        ("Round 3", "measure", 0),
    ]


def test_a_marker_is_asked_for_one_row_before() -> None:
    """And not again within the next few rows."""
    words = ("sc around", "sc around, place a marker", "sc around, place a marker", "sc around")
    rows = tuple(round_of(n, 6, 6, (), w) for n, w in enumerate(words, start=1))
    made = make_plan(pattern(CountedPart("Keel", 1, rows)), "x").parts[0].rows
    assert [one for one in told(made) if one[1] == "marker"] == [("Round 1", "marker", 1)]


def test_turning_is_told_where_it_begins() -> None:
    """Rounds that become turned rows."""
    words = ("sc around", "sc around", "sc across, turn", "sc across, turn")
    rows = tuple(round_of(n, 6, 6, (), w) for n, w in enumerate(words, start=1))
    made = make_plan(pattern(CountedPart("Flap", 1, rows)), "x").parts[0].rows
    assert [one for one in told(made) if one[1] == "turn"] == [("Round 3", "turn", 0)]


def test_other_needles_are_named_one_row_before() -> None:
    """Words between rows two and three."""
    rows = tuple(round_of(n, 80, 80, (), "k around") for n in range(1, 5))
    note = remark("note", "Change to larger needles.", 2)
    made = make_plan(pattern(CountedPart("Hat", 1, rows, (note,))), "x").parts[0].rows
    assert [one for one in told(made) if one[1] == "tool"] == [("Round 2", "tool", 1)]


def test_no_notice_comes_after_its_row() -> None:
    """Rows ahead are never negative, and a part without rows has no notices."""
    assert all(
        n.rows_ahead >= 0 for part in buoy_plan().parts for row in part.rows for n in row.notices
    )
    only = make_plan(
        pattern(CountedPart("Note", 1, (), (remark("note", "At the same time, rest."),))), "x"
    )
    assert told(only.parts[0].rows) == []
