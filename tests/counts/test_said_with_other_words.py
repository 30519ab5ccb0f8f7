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
