"""Where a printed total and the words disagree, the next rows decide; the disagreement is told."""

from __future__ import annotations

from reader.counts.account import count_pattern
from reader.counts.counted import CountedPattern, Verdict
from reader.pattern.parser import parse_pattern


def counted(text: str) -> CountedPattern:
    """The counted pattern of a knitting text."""
    return count_pattern(parse_pattern(text, craft="knitting"))


def rows_of(text: str) -> list[int | None]:
    """The counts of its rows."""
    return [row.count for part in counted(text).parts for row in part.rows]


MISCOUNTED = """Mooring Strip

Cast on 11 sts.
Row 1: Sl 1, *yo, k1; rep from * to end. (20 sts)
Row 2: Knit.
Row 3: *K2tog; rep from * to end.
"""
MISPRINTED = """Mooring Strip

Cast on 20 sts.
Row 1: *K3, m1; rep from * to last 2 sts, k2. (25 sts)
Row 2: Knit.
Row 3: *K1, k2tog; rep from * to last 2 sts, k2.
"""


def test_a_printed_total_is_gone_on_with_where_only_it_lets_the_next_rows_close() -> None:
    """The words make 21, which can't be knitted together by twos; the printed 20 can."""
    assert rows_of(MISCOUNTED) == [11, 20, 20, 10]


def test_the_words_are_gone_on_with_where_only_they_let_the_next_rows_close() -> None:
    """The words make 26, and 24 of them divide by three; 23 would not."""
    assert rows_of(MISPRINTED) == [20, 26, 26, 18]


def test_the_disagreement_is_told_once_either_way() -> None:
    """Whichever number is right, the maker hears of both."""
    for text in (MISCOUNTED, MISPRINTED):
        verdicts = [one.verdict for one in counted(text).problems]
        assert verdicts == [Verdict.TOTAL_DISAGREES]


SPOILED = """Four-sided mat

Cast on 2 stitches on each of 4 needles.
1st round: * Over, knit 1, over, knit 1; repeat from *.
2nd round: * Knit 1, over, knit 1, over, knit 2; repeat from *.
3rd round: * Knit 1, over, knit 1, over, knit 3; repeat from *.
4th round: * Knit 3, over, knit 1, over, knit 4; repeat from *.
"""


def test_a_misfit_keeps_as_many_repeats_as_the_rows_before() -> None:
    """The 3rd round lacks a stitch in each repeat; the 4th needs 8 for each of four, so 32."""
    assert rows_of(SPOILED) == [8, 16, 24, 32, 40]
    assert [one.label for one in counted(SPOILED).problems] == ["Round 3"]


def test_no_row_leaves_less_than_nothing() -> None:
    """Rows worked again behind a cast-off that left nothing: not known, and not minus two."""
    words = (
        "Cast on 9 sts.\nNext row: K1, skpo, k to last ts, k2tog, k1.\n"
        "Cast off.\nRep last 2 rows 4 times more."
    )
    rows = [row for part in count_pattern(parse_pattern(words), 0).parts for row in part.rows]
    assert len(rows) > 1
    assert all(row.count is None or row.count >= 0 for row in rows)


PICKED_UP = """MATE'S MITTEN

THUMB
Slip the 16 sts from waste yarn onto three needles, pick up and K2 sts from base. 19 sts.
Knit 16 rounds.
Next round: (K2tog) to end. 9 sts.
"""


def test_a_total_of_stitches_taken_on_is_settled_by_the_rows_behind_it() -> None:
    """16 and 2 are 18: only over these do pairs close, however many plain rounds lie between."""
    counts = rows_of(PICKED_UP)
    assert (counts[:2], counts[-1]) == ([18, 18], 9)
    assert [one.verdict for one in counted(PICKED_UP).problems] == [Verdict.TOTAL_DISAGREES]
