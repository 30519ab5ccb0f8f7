"""Lists for sizes that the pattern does not have, and changes told of no row, are asked about."""

from __future__ import annotations

from reader.counts.account import count_pattern
from reader.counts.counted import Verdict
from reader.counts.listed import unresolved
from reader.pattern.parser import parse_pattern


def last_count(text: str) -> tuple[int | None, list[Verdict]]:
    """The last row's count, and what is told of the whole."""
    counted = count_pattern(parse_pattern(text))
    return counted.parts[-1].rows[-1].count, [one.verdict for one in counted.problems]


def test_times_for_sizes_that_are_not_known_are_asked_about() -> None:
    """Of 15, 17 and 19 times none is taken."""
    text = "Sleeve\nCast on 60 sts. Knit 4 rows. Dec 1 st each end of every 4th row 5-7-9 times.\n"
    assert last_count(text) == (None, [Verdict.UNCLEAR])


def test_a_list_for_half_of_the_sizes_is_asked_about() -> None:
    """Three numbers where six sizes are knitted."""
    text = (
        "Sizes: S (M, L, XL, 2X, 3X)\nCast on 60 (64, 68, 72, 76, 80) sts. Knit 2 rows. "
        "Dec 1 st at each end of every 4th row 4 (5, 6) times.\n"
    )
    assert last_count(text) == (None, [Verdict.UNCLEAR])


def test_a_total_behind_ends_the_doubt() -> None:
    """What is worked even tells how many there are."""
    text = (
        "Sleeve\nCast on 60 sts. Dec 1 st each end of every 4th row 5-7-9 times. "
        "Work even on 46 sts until piece measures 9 inches. Bind off 4 sts at beg of next 2 rows.\n"
    )
    assert last_count(text)[0] == 38


def test_rows_by_their_numbers_and_ranges_are_no_such_list() -> None:
    """ "Rows 2, 4 and 6", "2-3 times", one number for each size."""
    assert unresolved("Repeat rows 1, 2, 3 times", 0, 1) == ""
    assert unresolved("Repeat this row 2-3 times", 0, 1) == ""
    assert unresolved("Dec 5 (6, 7) sts", 0, 3) == ""
    assert unresolved("every 4th row 8 (8, 8) times", 0, 6) == "8 (8, 8) times"


def test_a_change_told_of_several_rows_and_not_of_which_is_asked_about() -> None:
    """Six rows with "one stitch at each end": once, or in each of them."""
    text = "Flag\nCast on 30 sts. Knit 6 rows, decreasing one stitch at each end.\n"
    assert last_count(text) == (None, [Verdict.UNCLEAR])
