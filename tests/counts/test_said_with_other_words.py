"""One thing said with other words makes the same row: ends of knitted rows, changes named twice,
decreases of two stitches, how often a list is worked. Common practice, no source; the pieces
are invented.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

KNIT = "Buoy band\n\nCast on 28 sts.\nRow 1: Purl.\nRow 2: {}\nRow 3: Purl."
ROUNDS = (
    "Buoy\n\nRnd 1: 6 sc in MR\nRnd 2: inc x 6\nRnd 3: (sc, inc) x 6\nRnd 4: {}\nRnd 5: sc around"
)
KNITTED = {
    ("k1, k2tog, {}.", 27): (
        "k rem sts", "k rem", "k the remaining stitches", "k all to end", "knit rest", "end k",
        "knit rest of sts", "k the other sts", "knit out the row", "finish with knit",
    ),
    ("k1, {}, k to last 3 sts, k2tog, k1.", 26): (
        "slip, slip, knit", "ssk dec", "slip the next 2 sts knitwise, knit them together",
        "ssk (1 st decreased)", "sl 2 knitwise, k these 2 tog tbl",
    ),
    ("*k2, {}, k2tog; rep from * to end.", 28): ("y/o", "Y/O", "yo (make one)"),
    ("k2, {}, k to last 2 sts, m1, k2.", 30): (
        "m1 increase", "m1 inc", "M1 (make one)", "m1 (inc)",
    ),
    ("*k2, k2tog{}; rep from * to end.", 21): ("", " (1 st decreased)", " (dec 1)", " dec"),
    ("{}", 28): ("Knit row.", "Plain row.", "Purl row."),
}
CROCHETED = {
    ("(2 sc, {}) x 6", 24): (
        "inc (2 sc in next st)", "inc (2sc in one st)", "sc 2x in next st", "inc (increase 1)",
    ),
    ("(sc, {}) x 6", 12): (
        "sc the next 2 sts tog", "sc 2 sts tog", "sc the next two stitches together",
        "single crochet next 2 stitches together",
    ),
    ("({}, dec) x 3, sc in last 6", 15): (
        "sc for the next 2 sts", "sc for next 2 stitches", "sc for 2 sts", "2 regular sc",
    ),
    ("{}, repeat this 5 more times", 24): (
        "sc in next 2 sts, 2 sc in next st", "sc in each of next 2 sts, inc", "2 sc, inc",
    ),
    ("{} around", 9): (
        "dec in each 2 sts", "dec in every two sts", "decrease over each pair of sts",
    ),
    ("sc around{}", 18): (
        ", 1 sl st in first st", ", one sl st to first sc", ", end with a sl st",
        ", finish with a slip st",
    ),
}
FLAT = "Buoy mat\n\n{}\nRow 1: {}.\nRow 2: ch 1, turn, sc across.\nRow 3: {}.\nRow 4: {}.\n"
CHAINS = (
    "Ch21", "Ch21, turn", "Chain: 21", "Chain up 21.", "Set up: ch 21", "Foundation row: Ch 21.",
    "Foundation chain: 21",
)
FIRST_ROWS = (
    "sc in each ch starting from the 2nd ch from hook",
    "sc in each ch across beginning in second ch from the hook",
    "insert hook in 2nd ch from hook, sc in each ch across",
    "sc in 2nd ch from hook and in each ch(s) across, make 1 ch, turn",
)
AS_BEFORE = (
    "= row 2", "row 2 again", "as row 2", "rep row 2", "as per row 2", "as given for row 2",
    "ditto row 2", "repeat as row 2", "same instructions as row 2", "rep instructions for row 2",
    "another row 2", "row 2 repeat", "ch 1, turn, sc in each st's across",
    "ch 1, turn, 1 sc in every stitch(es)",
)
AT_ENDS = (
    "sc2tog at each end of row", "sc2tog at both ends", "dec 1 st at each end",
    "dec 1 st at each end: sc2tog, sc to last 2 sts, sc2tog", "sc2tog at beg and end of row",
)
CASES = [
    (frame.format(row.format(said)), at, count)
    for frame, at, rows in ((KNIT, 2, KNITTED), (ROUNDS, 4, CROCHETED))
    for (row, count), ways in rows.items()
    for said in ways
]


@pytest.mark.parametrize(("text", "at", "count"), CASES)
def test_the_row_is_the_same(text: str, at: int, count: int) -> None:
    counted = count_pattern(parse_pattern(text))
    rows = {row.number: row.count for part in counted.parts for row in part.rows}
    assert (rows[at], rows[at + 1]) == (count, count)
    assert not counted.problems


@pytest.mark.parametrize("times", ["x 6", "6 times"])
def test_a_number_of_times_may_be_of_the_whole_list(times: str) -> None:
    row = f"sc in next st, sc2tog {times} (12)"
    counted = count_pattern(parse_pattern(ROUNDS.format(row)))
    assert [row.count for part in counted.parts for row in part.rows][3] == 12
    assert not counted.problems


@pytest.mark.parametrize("row", ["k1, p1 in every st.", "K1, p1 in each stitch."])
def test_a_list_may_still_go_into_each_stitch(row: str) -> None:
    counted = count_pattern(parse_pattern(KNIT.format(row)))
    rows = {row.number: row.count for part in counted.parts for row in part.rows}
    assert rows[2] == 56


@pytest.mark.parametrize(
    ("chain", "first", "again", "ends"),
    [
        *((chain, FIRST_ROWS[0], AS_BEFORE[0], AT_ENDS[0]) for chain in CHAINS),
        *((CHAINS[0], first, AS_BEFORE[1], AT_ENDS[1]) for first in FIRST_ROWS),
        *((CHAINS[2], FIRST_ROWS[1], again, AT_ENDS[2]) for again in AS_BEFORE),
        *((CHAINS[0], FIRST_ROWS[0], AS_BEFORE[2], ends) for ends in AT_ENDS),
    ],
)
def test_a_cloth_is_the_same(chain: str, first: str, again: str, ends: str) -> None:
    text = FLAT.format(chain, first, again, f"ch 1, turn, {ends}")
    counted = count_pattern(parse_pattern(text))
    rows = {row.number: row.count for part in counted.parts for row in part.rows}
    assert [rows[at] for at in range(1, 5)] == [20, 20, 20, 18]
    assert not counted.problems


def test_rows_that_call_others_end_in_no_total() -> None:
    again = "\n".join(f"Row {at}: as row {at - 2}" for at in range(4, 9))
    text = f"Buoy mat\n\nCh 21.\nRow 1: sc in 2nd ch from hook and in each ch across.\n{again}"
    text = text.replace("Row 4: as row 2", "Row 2: ch 1, turn, sc across\nRow 3: as row 2\n"
                        "Row 4: as row 3")
    counted = count_pattern(parse_pattern(text))
    assert {row.count for part in counted.parts for row in part.rows if row.number} == {20}
    assert not counted.problems


@pytest.mark.parametrize(
    "often", ["another 2 times", "2 further times", "2 more times", "a further 2 times",
              "2 times again", "an additional 2 times"],
)  # fmt: skip
def test_so_often_more(often: str) -> None:
    text = (
        "Buoy square\n\nCh 6, join to form a ring.\nRound 1: Ch 3 (counts as dc), 2 dc in ring, "
        f"*ch 3, 3 dc in ring; rep from * {often}, ch 3, join.\n"
    )
    counted = count_pattern(parse_pattern(text))
    assert [row.count for part in counted.parts for row in part.rows if row.number] == [12]
    assert not counted.problems


def test_each_end_in_knitting() -> None:
    counted = count_pattern(parse_pattern(KNIT.format("K2tog at each end of row.")))
    rows = {row.number: row.count for part in counted.parts for row in part.rows}
    assert (rows[2], rows[3]) == (26, 26)


CHANGE_TOLD = {
    (ROUNDS, 24): (
        "inc 6 evenly: (2 sc, inc) x 6", "inc 6 sts evenly as follows: (2 sc, inc) x 6",
        "increase 6 sts: (2 sc, inc) x 6", "inc 6 sts evenly - (2 sc, inc) x 6",
        "inc 6 evenly (2 sc, inc) x 6", "(2 sc, inc) x 6, increasing 6 sts evenly",
        "increase 6: *2 sc, inc*; rep around", "(2 sc, inc) x 6 [+6 sts]", "inc 6 sts evenly",
        "sc around, increasing 6 sts evenly", "(2 sc, inc) x 6 (6 sts increased)",
    ),
    (KNIT, 26): (
        "dec 1 st at each end: k1, k2tog, k to last 3 sts, ssk, k1.",
        "decrease 1 st each end as follows: k1, ssk, k to last 3 sts, k2tog, k1.",
        "k1, k2tog, k to last 3 sts, ssk, k1, decreasing 1 st at each end.",
        "dec 1 st at each end, k all else.", "k1, k2tog, k to last 3 sts, ssk, k1 (-2 sts)",
    ),
    (KNIT, 21): (
        "dec 7 sts evenly: *k2, k2tog; rep from * to end.", "(k2, k2tog) across, decreasing 7 sts.",
        "dec 7 sts across: k2, k2tog, repeat to end.", "knit, decreasing 7 sts evenly.",
        "decrease 7 sts evenly across by working (k2, k2tog) to end.",
    ),
}


@pytest.mark.parametrize(
    ("text", "at", "count"),
    [
        (frame.format(row), 4 if frame == ROUNDS else 2, count)
        for (frame, count), rows in CHANGE_TOLD.items()
        for row in rows
    ],
)
def test_what_a_list_does_is_done_once(text: str, at: int, count: int) -> None:
    counted = count_pattern(parse_pattern(text))
    rows = {row.number: row.count for part in counted.parts for row in part.rows}
    assert (rows[at], rows[at + 1]) == (count, count)
    assert not counted.problems


BEGUN = [
    f"{begins} {row}, {work}"
    for begins in ("Starting with", "Beg with", "Commencing on", "Beginning with")
    for row in ("a purl row", "purl row", "a P row", "a WS row")
    for work in ("work 4 rows in stocking stitch.", "work 4 rows st st.")
]


@pytest.mark.parametrize("begun", BEGUN)
def test_with_which_row_a_fabric_begins_is_no_row(begun: str) -> None:
    text = f"Buoy band\n\nCast on 20 sts.\nRow 1: Knit.\n{begun}\nRow 6: k1, k2tog, k to end.\n"
    counted = count_pattern(parse_pattern(text))
    rows = [row.count for part in counted.parts for row in part.rows if row.label != "Cast on"]
    assert rows == [20] * 5 + [19]
    assert not counted.problems


MARKED = "Buoy hat\n\nCast on 40 sts, join in the round.\nRnd 1: *K10, pm; rep from * around.\n"
AT_MARKERS = (
    "k to 2 sts before each marker, k2tog.", "knit to 2 stitches before every marker, ssk, sm.",
    "*k to 2 sts from marker, k2tog; rep from * to end.",
    "*k to 2 sts before marker, k2tog, sm; rep from * around.",
)
FLAT_ROWS = {
    "kfb in first and last st.": 22, "inc in first and last st.": 22,
    "decrease 1 stitch at beginning and 1 stitch at end of row.": 18, "no shaping": 20,
    "without shaping.": 20, "dec one st at beg and one st at the end.": 18,
}


@pytest.mark.parametrize("row", AT_MARKERS)
def test_a_change_at_each_marker(row: str) -> None:
    counted = count_pattern(parse_pattern(f"{MARKED}Rnd 2: {row}\nRnd 3: Knit.\n"))
    assert [row.count for part in counted.parts for row in part.rows][-2:] == [36, 36]
    assert not counted.problems


@pytest.mark.parametrize(("row", "count"), FLAT_ROWS.items())
def test_a_row_in_few_words(row: str, count: int) -> None:
    text = f"Buoy band\n\nCast on 20 sts.\nRow 1: Knit.\nRow 2: {row}\nRow 3: Purl.\n"
    counted = count_pattern(parse_pattern(text))
    assert [row.count for part in counted.parts for row in part.rows][-2:] == [count, count]
    assert not counted.problems


@pytest.mark.parametrize(
    "again", ["Repeat on next row.", "Rep at beg of next row.", "Repeat for the following row."]
)
def test_a_row_again_on_the_next(again: str) -> None:
    text = (
        "Buoy band\n\nCast on 20 sts.\nRow 1: Knit.\n"
        f"Row 2: BO 4 sts, k to end. {again}\nRow 4: Knit.\n"
    )
    counted = count_pattern(parse_pattern(text))
    assert [row.count for part in counted.parts for row in part.rows][-3:] == [16, 12, 12]
    assert not counted.problems


@pytest.mark.parametrize("again", ["Rep prev 2 rows 3x.", "Repeat prev 2 rows three times."])
def test_the_rows_before(again: str) -> None:
    text = (
        "Buoy band\n\nCast on 20 sts.\nRow 1: K2tog, k to last 2 sts, k2tog.\nRow 2: Purl.\n"
        f"{again}\nRow 9: Knit.\n"
    )
    counted = count_pattern(parse_pattern(text))
    assert [row.count for part in counted.parts for row in part.rows][-3:] == [12, 12, 12]
    assert not counted.problems


def test_a_goal_in_stitches_is_no_row() -> None:
    text = "Buoy band\n\nCast on 8 sts.\nRow 1: kfb, k to end.\nRep row 1 to 12 sts.\nRow 5: Knit."
    counted = count_pattern(parse_pattern(text))
    assert max(row.count or 0 for part in counted.parts for row in part.rows) <= 12
