"""Words that tell what remains are held against the count."""

from __future__ import annotations

from reader.counts.account import count_pattern
from reader.counts.counted import Verdict
from reader.pattern.parser import parse_pattern


def asked(text: str) -> list[int | None]:
    """The stitches told in the questions of a text."""
    problems = count_pattern(parse_pattern(text)).problems
    return [one.printed for one in problems if one.verdict is Verdict.UNCLEAR]


def test_a_remainder_that_is_not_on_the_needle_is_asked_about() -> None:
    """Fifty less twelve is no forty: one of the numbers is wrong, and neither is accused."""
    told = "Cast on 50 sts. Knit 4 rows. Bind off 6 sts at beg of next 2 rows. Bind off remaining "
    assert asked(told + "40 sts.") == [40]
    assert asked(told + "38 sts.") == []


def test_a_remainder_is_taken_where_the_count_is_not_known() -> None:
    """After a change that only a measure ends, the words tell what is on the needle."""
    text = (
        "Cast on 50 sts. Knit 4 rows. Dec 1 st at each end of every row until piece measures 9 "
        "inches. Place remaining 20 sts on a holder. Next row: Knit 20."
    )
    rows = [row for part in count_pattern(parse_pattern(text)).parts for row in part.rows]
    assert 20 in [row.count for row in rows]


def test_last_ones_bound_off_must_be_the_last() -> None:
    """Common practice, no source: one more than told is the stitch that binding off leaves on the
    needle; five more are asked about.
    """
    told = "Cast on 40 sts.\nRow 1: Knit.\nRow 2: Bind off 10, k {}, bind off last 10."
    assert asked(told.format(19)) == asked(told.format(20)) == []
    assert len(asked(told.format(15))) == 1


def test_stitches_no_word_tells_of_amid_a_row_are_asked_about() -> None:
    """Arithmetic: forty less ten and ten and eighteen leaves two."""
    told = "Cast on 40 sts.\nRow 1: Knit.\nRow 2: K 10, bind off 10, k {}."
    assert asked(told.format("20")) == asked(told.format("to end")) == []
    assert len(asked(told.format("18"))) == 1
