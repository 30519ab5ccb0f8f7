"""Rows told by what every row from here on is, by how many more there are of the last one, shaping
rows told by their pace and number, and stitches bound off over so many rows: however they are
said, they count the same. Common practice, no source; the pieces are invented.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

TILL_TWENTY = (
    "This is every row till there are 20.",
    "This is every row until you have 20 sts.",
    "This is every row till twenty are counted.",
    "Every row is like this until you have 20 sts.",
    "Every row is the same until there are 20 on the needle.",
    "All rows are like this until 20 sts.",
    "Repeat this row till you have 20.",
    "Do this every row until you count 20 sts.",
    "That is the row, till there are twenty.",
    "Every row so, until there are 20 stitches.",
    "Go on so, every row, till there are 20.",
    "Keep at this row until there are 20.",
    "Each row is worked this way until there are 20 stitches.",
    "And so every row till you count twenty.",
    "That row over and over until twenty stitches.",
    "Work every row like that till you've 20.",
    "This one row is all you do until there are 20 sts.",
    "This is the only row, until 20 are on the needle.",
    "The same every row till twenty are counted.",
    "Every row the same till you can count 20.",
    "Do that row over again till twenty are on the needle.",
    "This row is repeated until there are 20 sts.",
    "Continue so for every row until 20 stitches have been reached.",
    "That's every row until you have 20 sts.",
)  # fmt: skip
TILL_FOUR = (
    "This also is every row till but four are left.",
    "This too is every row until there are 4.",
    "This is every row until only 4 are left.",
    "Every row like this until 4 remain.",
    "Repeat this row until 4 sts rem.",
    "Every row so till you are back to 4.",
    "And this is every row, till you have four again.",
    "Again every row the same, until four are left.",
    "Do this every row until no more than four are left.",
    "Keep on till four are left.",
    "Each row is this until you come down to 4 sts.",
    "Likewise every row until there are but 4.",
    "Every row again, till four stitches are all that is left.",
    "This also is every row, from the eighteenth, till but four are left.",
)  # fmt: skip
SEVEN_MORE = (
    "Work 7 more rows like this.",
    "7 more rows like that.",
    "Then 7 more of the same.",
    "And 7 more the same.",
    "Seven more rows the same.",
    "Do the same row 7 more times.",
    "Work that row another seven times.",
    "The same for 7 more rows.",
    "Knit 7 more rows in the same way.",
    "Repeat for 7 more rows.",
    "Rep this row 7 times more.",
    "Again seven times.",
    "Do 7 more like it.",
    "Another 7 rows exactly the same.",
    "The next 7 rows are the same.",
    "Next 7 rows: the same.",
    "Next seven rows as last.",
    "Now 7 rows more, all alike.",
    "7 rows more as this one.",
    "Make seven more such rows.",
    "And so for seven more rows.",
    "Carry on like this for 7 more rows.",
    "Keep that up for 7 more rows.",
    "Work this same row for 7 more rows, so 8 rows in all.",
    "Eight rows like this in all.",
    "Do this row 8 times altogether.",
    "Work 8 rows like this in all.",
    "8 such rows in all.",
    "Eight of these rows in all.",
)  # fmt: skip
EVERY_SIXTH = (
    "Inc in the same way on every 6th row after that, 5 [6] inc rows in total - 44 [50] sts.",
    "Inc in this way on every following 6th row until there are 44 [50] sts.",
    "Repeat the inc row on every 6th row, 4 [5] times more - 44 [50] sts.",
    "Repeat the inc row every 6th row until there are 5 [6] inc rows in all. 44 [50] sts.",
    "Inc in the same way every 6th row 4 [5] more times. 44 [50] sts.",
    "Inc as before on every 6th row, making 5 [6] inc rows altogether. 44 [50] sts.",
    "Work inc row again on each following 6th row 4 [5] times - 44 [50] sts.",
    "Inc like this on each foll 6th row 4 [5] times, giving 44 [50] sts.",
    "Inc in the same manner at both ends of every 6th row till you have 44 [50] sts.",
    "Then inc in the same way on every 6th row until you have worked 5 [6] inc rows in all: "
    "44 [50] sts.",
    "Make an inc row like that every 6th row until you've got 44 [50] sts.",
    "Repeat inc row every 6 rows 4 [5] times. 44 [50] sts.",
    "Inc 1 st at both ends of every 6th row to 44 [50] sts.",
    "Continue to inc in this way on every 6th row until 44 [50] sts.",
    "Inc in this way on every 6th row, 4 [5] further inc rows. 44 [50] sts.",
    "Do the same on every 6th row until 5 [6] inc rows have been worked. 44 [50] sts.",
    "Shape the same way every 6th row, 5 [6] inc rows in all - 44 [50] sts.",
    "Do the same on every 6th row until 5 [6] inc rows have been worked. 44 [50] sts.",
    "Shape the same way every 6th row, 5 [6] inc rows in all - 44 [50] sts.",
    "Work an inc row on every 6th row after this, 5 [6] in total (44 [50] sts).",
    "Continue in the same way on every 6th row, 5 [6] increase rows in all. 44 [50] sts.",
    "Carry on in this way on every 6th row, until there are 44 [50] sts.",
    "Work an increase row like this every sixth row until there are 44 [50] sts.",
    "Then do likewise on each following 6th row till 44 [50] sts.",
    "Then shape in the same way on every 6th row until there are 44 [50] sts on the needle.",
    "Increase likewise every 6th row, 4 [5] more times. 44 [50] sts.",
    "Work this inc row again every 6th row until there are 44 [50] sts.",
    "Work the inc row every 6 rows until you have 44 [50] sts.",
    "Continue shaping like this on every 6th row until 44 [50] sts are on the needle.",
    "Inc at each end of every 6th row thereafter until there are 44 [50] sts.",
    "Inc 1 st at each end of every 6th row after that until you have 44 [50] sts in all.",
    "Inc both ends of each foll 6th row until 44 [50] sts.",
    "Inc each end of every 6th row 4 [5] times in addition. 44 [50] sts.",
)  # fmt: skip
OFF_TWICE = (
    "Shape shoulders: Cast off 6 [8] sts to start each of next 2 rows, then 6 [7] sts to "
    "start each of next 2 rows - 22 [26] sts.",
    "Shoulders: Cast off 6 [8] sts at start of each of next 2 rows, then 6 [7] sts at start "
    "of each of following 2 rows. 22 [26] sts.",
    "Cast off 6 [8] sts at the beginning of the next 2 rows, then 6 [7] sts at the beginning "
    "of the next 2 rows - 22 [26] sts.",
    "Cast off 6 [8] sts at beg of next 2 rows and 6 [7] sts at beg of following 2 rows. 22 "
    "[26] sts.",
    "Cast off 6 [8] sts to begin each of next 2 rows and 6 [7] sts to begin each of "
    "following 2 rows. 22 [26] sts.",
    "Bind off 6 [8] sts at the start of the next 2 rows, then bind off 6 [7] sts at the "
    "start of the 2 rows after that (22 [26] sts).",
    "Bind off 6 [8] sts to open each of the next two rows, then 6 [7] sts to open each of "
    "the two after. 22 [26] sts remain.",
    "At the start of each of the next 2 rows cast off 6 [8] sts, then 6 [7] sts on the 2 "
    "rows after. 22 [26] sts.",
    "Cast off 6 [8] sts at the beg of each of next 2 rows and then 6 [7] sts at the beg of "
    "each of the 2 foll rows (22 [26] sts left).",
    "Cast off 6 [8] sts beginning next 2 rows, 6 [7] sts beginning following 2 rows. 22 [26] sts.",
    "Cast off 6 [8] sts at the start of next 2 rows; then 6 [7] sts at the start of next 2 "
    "rows, leaving 22 [26] sts.",
    "Cast off for shoulders 6 [8] sts at the start of the next 2 rows, then 6 [7] sts at the "
    "start of the following 2 rows: 22 [26] sts.",
    "Next 2 rows: cast off 6 [8] sts, work to end. Following 2 rows: cast off 6 [7] sts, "
    "work to end. 22 [26] sts.",
    "Cast off 6 [8] sts at each of the next 2 row starts, then 6 [7] sts at each of the 2 "
    "after. 22 [26] sts.",
    "On each of next 2 rows cast off 6 [8] sts at the start, then on each of next 2 rows 6 "
    "[7] sts. 22 [26] sts.",
    "Cast off 6 [8] sts at the start of each of the next 2 rows. Cast off 6 [7] sts at the "
    "start of each of the 2 rows that follow. 22 [26] sts.",
    "Take off 6 [8] sts at the beginning of each of next 2 rows, then 6 [7] sts at the "
    "beginning of each of next 2 rows - 22 [26] sts.",
    "Loosely cast off 6 [8] sts at beg next 2 rows, 6 [7] sts at beg foll 2 rows. 22 [26] sts.",
    "Cast off 6 [8] sts to start each of next 2 rows, then 6 [7] sts to start each of next 2 "
    "rows - 22 [26] sts. Slip these to the holder.",
    "Cast off 6 [8] sts to start each of next 2 rows, then 6 [7] sts to start each of next 2 "
    "rows - 22 [26] sts; put these on a spare needle.",
    "Cast off 6 [8] sts at beg of next 2 rows, and 6 [7] sts at beg of next 2 rows. Slip "
    "remaining 22 [26] sts onto a holder.",
    "Cast off 6 [8] sts at beg of next 2 rows, then 6 [7] at beg of next 2 rows, placing the "
    "remaining 22 [26] sts on a holder.",
)  # fmt: skip
OFF_THE_LAST = (
    "Cast off what is left, 6 [7] sts.",
    "Cast off the rest, 6 [7] sts.",
    "Cast off what remains (6 [7] sts).",
    "Bind off the remaining sts - 6 [7].",
    "Cast off remaining sts (6 [7]).",
    "Cast off whatever is left, 6 [7] sts.",
    "Cast off what's left (6 [7] sts)",
    "Cast off everything left, 6 [7] sts.",
)  # fmt: skip
GROWS = "Mooring cloth\n\nCast on 4 sts and knit one row.\nNext row: K2, yo, k to end. "
SHRINKS = "\nNext row: K1, k2tog, yo, k2tog, k to end. "
GROWN, SHRUNK = list(range(5, 21)), list(range(19, 3, -1))
SLEEVE = (
    "Gull sleeve\n\nCast on 34 [38] sts.\nRow 1: K.\nRow 2: P.\n"
    "Inc row (RS): K2, m1, k to last 2 sts, m1, k2.\n"
)
BACK = "Gull back\n\nCast on 46 [56] sts.\nRow 1: K.\nRow 2: P.\n"
SHOULDER = (
    "Gull front\n\nCast on 12 [13] sts.\nRow 1: K.\nRow 2: P.\n"
    "Cast off 6 [6] sts, k to end. P 1 row. "
)


def counts(text: str, size: int = 0) -> list[int | None]:
    pattern = count_pattern(parse_pattern(text), size)
    return [row.count for part in pattern.parts for row in part.rows]


@pytest.mark.parametrize("told", TILL_TWENTY)
def test_a_row_that_is_every_row(told: str) -> None:
    assert counts(GROWS + told) == [4, 4, *GROWN]


@pytest.mark.parametrize("told", TILL_FOUR)
def test_a_row_that_is_every_row_till_few_are_left(told: str) -> None:
    text = f"{GROWS}Repeat this row until there are 20 sts.{SHRINKS}{told}"
    assert counts(text) == [4, 4, *GROWN, *SHRUNK]


@pytest.mark.parametrize("told", SEVEN_MORE)
def test_so_many_more_of_the_last_row(told: str) -> None:
    knitted = f"Mooring band\n\nCast on 4 sts.\nNext row: K2, yo, k to end. {told}\nNext row: P."
    assert counts(knitted) == [4, *range(5, 13), 12]
    crocheted = (
        "Mooring band\n\nCh 5.\nRow 1: Sc in 2nd ch from hook and in each ch across. (4 sc)\n"
        f"Row 2: Ch 1, turn, 2 sc in first sc, sc in each sc to end. {told}\n"
        "Next row: Ch 1, turn, sc in each sc across."
    )
    assert counts(crocheted)[-10:] == [4, *range(5, 13), 12]


@pytest.mark.parametrize("size", [0, 1])
@pytest.mark.parametrize("told", EVERY_SIXTH)
def test_shaping_rows_at_a_pace(told: str, size: int) -> None:
    first = (34, 38)[size]
    changed = [n for n in range(first + 2, (44, 50)[size], 2) for _ in range(6)]
    assert counts(SLEEVE + told, size) == [first] * 3 + changed + [(44, 50)[size]]


@pytest.mark.parametrize("told", OFF_TWICE)
def test_bound_off_over_rows_and_then_over_others(told: str) -> None:
    assert counts(BACK + told) == [46, 46, 46, 40, 34, 28, 22]
    assert counts(BACK + told, 1) == [56, 56, 56, 48, 40, 33, 26]


@pytest.mark.parametrize("told", OFF_THE_LAST)
def test_what_is_left_is_bound_off(told: str) -> None:
    assert counts(SHOULDER + told) == [12, 12, 12, 6, 6, 0]
    assert counts(SHOULDER + told, 1) == [13, 13, 13, 7, 7, 0]


def test_rows_that_are_called_back_by_number_stay_so() -> None:
    """Other rows than the last, a label, and plain rows are no such sentence."""
    two = "Buoy\n\nCast on 10 sts.\nRow 1: K1, m1, k to end.\nRow 2: P.\n"
    assert counts(two + "Repeat the last 2 rows until there are 13 sts.")[-1] == 13
    assert counts(two + "Rep these 2 rows 3 more times.")[-1] == 14
    assert counts(two + "Work 3 more rows.") == [10, 11, 11, 11, 11, 11]
