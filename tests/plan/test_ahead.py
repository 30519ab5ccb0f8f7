"""Notices come before the row that they affect, never after."""

from __future__ import annotations

from reader.counts.counted import CountedPart
from reader.plan.step import PlanRow, RowKind
from reader.plan.unroll import make_plan
from tests.plan.made import BUOY_ROUNDS, buoy_plan, move, pattern, remark, round_of
from tests.session.play import plan_of


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
    assert found == [
        ("Row 1", "same time", 3),
        ("Row 3", "same time", 1),
        ("Row 4", "same time", 0),
    ]


def test_what_goes_on_meanwhile_is_told_at_the_start_of_the_part_in_one_size() -> None:
    """It may begin long before the line that tells of it; only the chosen size's number is told."""
    text = (
        TWO_SIZES + "At the same time, when it measures 30 (34) cm, change to blue.\nBO all sts.\n"
    )
    rows = plan_of(text, 1).parts[0].rows
    first = next(n.text for n in rows[0].notices if n.kind == "same time")
    assert first.startswith("Further on in this part, at the same time: when it measures 34 cm")
    assert all("30" not in n.text for row in rows for n in row.notices)


TWO_SIZES = """Pier Bag

Sizes: small (large)

BAG
Cast on 20 (24) sts.
Row 1: k to end.
Row 2: p to end.
Row 3: k to end.
Row 4: p to end.
"""


def test_rows_repeated_to_a_length_tell_how_to_hear_them_again() -> None:
    """The length is that of the size; the last row is not called the last while it repeats."""
    text = TWO_SIZES + "Rep rows 3 and 4 until work measures 20 (25) cm.\n"
    rows = plan_of(text, 1).parts[0].rows
    told_last = [notice.text for notice in rows[-1].notices]
    assert told_last == [
        "Measure here, do not count. To hear the rows again, say go to row 3; next goes on."
    ]
    assert "until work measures 25 cm" in " ".join(n.text for n in rows[-2].notices)


def test_a_part_that_is_quoted_and_not_opened_is_named() -> None:
    """ "Work as for Back until": the maker is told where these rows can be heard."""
    text = TWO_SIZES.replace("BAG\n", "BACK\n") + (
        "BO all sts.\n\nFRONT\nCast on 20 (24) sts.\nWork as for Back until it measures 12 cm.\n"
    )
    rows = plan_of(text).parts[1].rows
    told_front = " ".join(n.text for row in rows for n in row.notices)
    assert (
        "The rows of the back are not read out here. To hear them, say go to part, then back"
        in told_front
    )


def test_a_colour_that_is_a_letter_is_told_by_its_yarns_name() -> None:
    """A ball bears its colour's name and not the pattern's letter."""
    text = "Rug\n\nMaterials\n2 balls of DK yarn in Heather (A)\n1 ball in Bracken (B)\n\nRUG\n" + (
        "With A, ch 12.\nRow 1: sc in 2nd ch from hook and in each ch. (11)\n"
        "Row 2: ch 1, sc in each st. (11)\nChange to B.\nRow 3: ch 1, sc in each st. (11)\n"
    )
    rows = plan_of(text).parts[0].rows
    told_all = [n.text for row in rows for n in row.notices if n.kind == "colour"]
    assert told_all[-1] == "Colour change ahead: Bracken, colour B, comes in the next row."


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
