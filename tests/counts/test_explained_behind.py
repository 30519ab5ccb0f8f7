"""What a bracket behind a stitch says of how it is made, or of what it was, is no work of its own.
The ways of working are common practice, no source; the pieces are invented.
"""

from __future__ import annotations

import itertools

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

KNIT = "Cast on 20 sts.\nRow 1: Knit.\nRow 2: {}.\nRow 3: Knit."
CROCHET = "Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across.\nRow 2: Ch 1, turn, {}.\n"
TOLD = {
    (KNIT, "k5, m1, k10, m1{}, k5", 22): (
        "by picking up the loop that lies before the next stitch and knitting into its back",
        "make one by knitting into the back of the strand before the next stitch",
        "to make 1, pick up the thread between the sts and knit into the back of it",
        "m1 = lift the bar between the stitches and knit it", "1 st increased", "inc made",
    ),
    (KNIT, "k1, k2tog, k to last 3 sts, ssk{}, k1", 18): (
        "sl 1, sl 1, k2tog tbl", "= slip 2 knitwise, return them to left needle, k2tog tbl",
        "slip, slip, knit", "1 st decreased", "that is, slip 2, then knit these 2 together",
    ),
    (KNIT, "k2, yo{}, k2tog, k16", 20): (
        "wool forward", "yarn over needle", "1 st made", "= yarn round needle",
    ),
    (KNIT, "k5, sl1, k1, psso{}, k13", 19): (
        "pass slipped stitch over", "psso means pass the slipped stitch over", "1 decreased",
    ),
    (CROCHET, "sc in first 5 sts, sc2tog{}, sc in next 13", 19): (
        "insert hook in next st, yo and pull up a loop, insert hook in next st, yo and pull up a"
        " loop, yo and draw through all 3 loops", "decrease made", "work 2 sts together",
        "pull up a loop in each of next 2 sts, yo, draw through 3 loops on hook",
    ),
    (CROCHET, "sc in first 5 sts, 2 sc in next st{}, sc in next 14", 21): (
        "two single crochets in the same stitch", "inc made", "this is an increase", "= inc",
    ),
    (CROCHET, "2 sc in first st, sc in each st to last st, 2 sc in last st{}", 22): (
        "increase at both ends made", "2 sts increased", "1 inc at each end",
    ),
}
CASES = [
    (frame.format(row.format(form.format(said))), count)
    for (frame, row, count), ways in TOLD.items()
    for said, form in itertools.product(ways, (" ({})", " [{}]", " ({}.)"))
]


@pytest.mark.parametrize(("text", "count"), CASES)
def test_an_explanation_works_nothing(text: str, count: int) -> None:
    counted = count_pattern(parse_pattern(text))
    rows = {row.number: row.count for part in counted.parts for row in part.rows}
    assert rows[2] == count
    assert not counted.problems


@pytest.mark.parametrize(
    ("row", "count"),
    [
        ("k2, (inc in next st) twice, k16", 22),
        ("k2, yo (k2tog) twice, k14", 19),
        ("(ssk, k1) twice, k14", 18),
    ],
)
def test_a_bracket_that_works_still_does(row: str, count: int) -> None:
    counted = count_pattern(parse_pattern(KNIT.format(row)))
    assert [r.count for part in counted.parts for r in part.rows if r.number == 2] == [count]
