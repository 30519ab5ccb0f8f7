"""Knitting told in running words, as books of before 1950 have it: turns and ribs for rows,
stitches told needle by needle, changes and ends said in a sentence's other order.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.counts.counted import CountedPattern
from reader.pattern.parser import parse_pattern


def counted(text: str) -> CountedPattern:
    """The text counted."""
    return count_pattern(parse_pattern(text))


def counts_of(text: str) -> list[int | None]:
    """The counts of all rows, the same one after the other told once."""
    rows = [row.count for part in counted(text).parts for row in part.rows]
    return [one for at, one in enumerate(rows) if at == 0 or one != rows[at - 1]]


@pytest.mark.parametrize(
    ("words", "counts"),
    [
        ("Knit six turns.", [20]),
        ("Knit 3 turns, increasing a stitch at each end, for the stern.", [20, 22, 24, 26]),
        ("Then knit four turns, decreasing 1 stitch at the end of every other turn.", [20, 19, 18]),
        ("Knit two turns, increasing a stitch at each row.", [20, 21, 22, 23, 24]),
        ("Then 4 rows, narrowing 1 at the end of every other row.", [20, 19, 18]),
        ("Increase at the beginning of every row. Knit 3 rows. Knit 2 rows.", [20, 21, 22, 23]),
        ("Knit a row, purl a row, five times.", [20]),
        ("Decrease 1 at each end of every row until you have decreased 4 stitches.", [20, 18, 16]),
        ("Knit, casting on 3 stitches at each end of every row till there are 32.", [20, 26, 32]),
        ("Next narrow 2 stitches at beginning and 2 stitches at end of every row until there are "
         "twelve stitches.", [20, 16, 12]),
        ("Cast off 4 at each end of the needle.", [20, 16, 12]),
        ("Work three-needle bind-off.", [20, 0]),
        ("Purl all but five, knit two together, knit three.", [20, 19]),
        ("Cast on 6 stitches toward the pier, making 26 stitches on the needle (about 5 inches).",
         [20, 26]),
    ],
)  # fmt: skip
def test_a_sentence_behind_a_cast_on(words: str, counts: list[int | None]) -> None:
    """What it leaves on the needle, and no question asked."""
    text = f"Cast on 20 stitches. {words}"
    assert counts_of(text) == counts
    assert [one.message for one in counted(text).problems] == []


@pytest.mark.parametrize(
    "words",
    [
        "Cast 16 stitches upon each of three needles and knit 4 rounds.",
        "Cast on three needles sixteen stitches each. Knit 4 rounds.",
        "Cast on for the wrist of the mitten 48 stitches. Knit 4 rows.",
        "Cast 16 stitches on each of three needles, then knit around 9 times in rib.",
        "Cast on 48 stitches, 16 on each needle. Knit ten turns.",
    ],
)
def test_a_cast_on_told_by_its_needles(words: str) -> None:
    """All that lie on them."""
    assert counts_of(words) == [48]


def test_a_goal_told_of_each_needle() -> None:
    """It is that of all of them; where nobody says how many they are, it is asked about."""
    goal = "Narrow at the end of each needle in every round until {} on each needle."
    told = "Cast on 60 stitches, 20 on each of three needles. Knit 2 rounds. "
    assert counts_of(told + goal.format("you have 18 stitches")) == [60, 57, 54]
    assert counts_of(told + goal.format("18 stitches are left")) == [60, 57, 54]
    asked = counted("Cast on 60 stitches. Knit 2 rounds. " + goal.format("18 stitches remain"))
    assert asked.parts[0].rows[-1].count is None


def test_a_list_so_often_begins_behind_what_is_counted_itself() -> None:
    """An over and a plain stitch eight times, and not what was done four times before."""
    row = "Knit two together, four times; over, knit one, eight times; {}."
    assert counts_of("Cast on 24 stitches.\n1st row: " + row.format("k2tog four times")) == [24]
    lace = "Slip 1, k. 2, o., t. 2, k. 1, o., t. 2, k. 4, o. 2, t. 2, k. 3."
    assert counts_of(f"Cast on 17 stitches.\n1st row: {lace}") == [17, 18]


def test_a_cast_on_without_a_number_is_not_counted() -> None:
    """Nobody knows how many lie on the needle."""
    rows = counted("Cast on for the foundation. Knit 4 rows.").parts[0].rows
    assert {row.count for row in rows} == {None}


@pytest.mark.parametrize(
    ("words", "counts"),
    [
        ("Continue this till 8 rows are worked.", [20, 21, 22, 23, 24, 25, 26, 27, 28]),
        ("Continue in this way for 3 rows.", [20, 21, 22, 23, 24]),
        ("Repeat this row until you have done 4 rows.", [20, 21, 22, 23, 24]),
    ],
)
def test_rows_go_on_as_the_last_one_did(words: str, counts: list[int]) -> None:
    """With its increase, though only rows are told."""
    row = "knit 10, over, knit the rest. "
    assert counts_of(f"Cast on 20 stitches, {row}{words}") == counts


def test_rows_that_a_sentence_speaks_of() -> None:
    """They have a label; those of the same manner go on growing."""
    star = (
        "Cast on 8 stitches, 2 on each needle; join.\n1st round: Knit plain.\n"
        "2nd round: * Over, knit 2; repeat from *.\n3rd round: Entirely knitted.\n"
        "4th round: * Over, knit 3 *.\n\n"
    )
    counts = [8, 12, 16, 20, 24, 28]
    more = "with one stitch more between the overs in every other round"
    told = f"{star}The 5th to 10th rounds are knitted in the same way, but {more}."
    assert counts_of(told) == counts
    like = "like the 4th round; only the plain part increases by one stitch in every round"
    between = "Knit plain. One plain round is knitted between all pattern rounds."
    plain = star.replace("Knit plain.", between)
    plain = plain.replace("3rd round: Entirely knitted.\n", "")
    told = f"{plain}The 6th, 8th and 10th rounds are knitted {like}.\n\n12th round: Knit."
    assert counts_of(told) == counts


def test_stitches_worked_by_their_kind() -> None:
    """None is worked twice."""
    row = "Slip 1, knit the stitches that were purled, purl the others."
    assert counts_of(f"Cast on 21 stitches.\n1st row: Slip 1, purl 20.\n2nd row: {row}") == [21]


def test_an_over_before_narrow_twice() -> None:
    """Whether it is worked twice too, the rows that follow tell."""
    rows = (
        "Cast on 11.\n1st row: Knit 1, over, knit 2, over, knit 2 together twice, knit 4.\n"
        "2nd row: Knitted.\n3rd row: {}"
    )
    assert counts_of(rows.format("Knit 1, over, knit 2 together, knit 9.")) == [11, 12]
    assert counts_of(rows.format("Knit 1, over, knit 2 together, knit 8.")) == [11]
    listed = "knit 3, make 1, take 2, knit 1, make 1, take 2, three times over."
    assert counts_of(f"Cast on 12.\n1st row: {listed}") == [12]


@pytest.mark.parametrize(
    ("text", "counts"),
    [
        ("Cast on 40 stitches on the first needle, and 20 on each of the other two. Knit 3 rounds.",
         [80]),
        ("Cast on 80 stitches. Knit 30, bind off 20, knit 30. Knit 7 ridges on each shoulder, "
         "cast on 20 stitches. Knit 4 rows.", [80, 60, 80]),
        ("Cast on 24 stitches. Knit 2 rounds. In each of the next 3 rounds narrow 1.",
         [24, 23, 22, 21]),
        ("Cast on 98 stitches, knit 6 rows. For the bow take 60 stitches, leaving the rest on the "
         "needle, and knit plain on those 60 for 8 rows.", [98, 60]),
        ("Cast on 1 stitch; increase in every row, and knit till you have 4.", [1, 2, 3, 4]),
        ("Cast on 20, knit 2 rows. Increase 1 at each end of every row until there are 4 more "
         "stitches.", [20, 22, 24]),
        ("Cast on 20 and knit 4 rows. Reduce until you have 16.", [20, 16]),
    ],
)  # fmt: skip
def test_what_lies_on_the_needles(text: str, counts: list[int]) -> None:
    """Told by needles, over a gap, for a part of the stitches, or by how many more."""
    assert counts_of(text) == counts


def test_lists_that_begin_again() -> None:
    """ "Repeat this all round" is the row's own list; a thread before the needle is an over."""
    row = "Knit 4, (over, knit 1) 8 times, knit 4, seam 3. Repeat this all round."
    assert counts_of(f"Cast on 38 stitches.\n1st round: {row}") == [38, 54]
    row = "make 1, pearl 1, * put the wool before the pin, pearl 2 together; repeat from *."
    assert counts_of(f"Cast on 29 stitches.\n1st row: {row}") == [29, 30]
    rows = "1st needle: slip 1, over, knit 9.\n2nd needle: knit 9, narrow.\n"
    rows += "".join(f"{n}th needle: knit.\n" for n in (4, 5, 6))
    told = "7th needle like the 1st, 8th needle like the 2nd."
    assert counts_of(f"Cast on 10 stitches.\n{rows}{told}") == [10, 11, 10, 11, 10]


def test_a_rib_told_once_goes_on_to_the_end() -> None:
    """Wherever that falls in it, and without an alarm."""
    rows = (
        "Cast on 26 stitches.\n1st row: knit two, pearl two, alternately, to the end.\n"
        "2nd row: pearl two; knit two.\n3rd row: pearl knitting."
    )
    assert counts_of(rows) == [26]
    assert counted(rows).problems == ()


def test_a_number_that_a_line_s_end_parts_from_its_stitch_is_no_total() -> None:
    text = (
        "Cast on 20 stitches.\n\n1st row.—Knit.\n\n"
        "2nd.—K. 2, m. 1, k. 2 t., k. 1, m. 1, k. 2 t., k. 4, m. 1, k. 2 t., p. 1, k.\n6.\n\n"
        "3rd.—Knit.\n"
    )
    counted = count_pattern(parse_pattern(text), 0)
    assert counted.parts[0].rows[-1].count == 20
    assert not counted.problems
