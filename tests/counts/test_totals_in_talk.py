"""Totals that end a row in talk, or are told with what they are the sum of: a right one agrees and
a wrong one is told. Common practice, no source; the rows are invented.
"""

import pytest

from reader.app.check import count_phrase

TALK = (
    ", which leaves you {}", ", leaving you with {}", ", and you are left with {}",
    ", for {}", ", to leave {}", ", down to {}", ", bringing you down to {}",
    ", so {} are left", ", {} now", ", {} sts rem", ". That leaves {} on the hook.",
)  # fmt: skip


@pytest.mark.parametrize("talk", TALK)
@pytest.mark.parametrize("number", ["21", "22"])
def test_talk_of_a_total(talk: str, number: str) -> None:
    counted = count_phrase("sc 2, sc2tog all the way round" + talk.format(number), 28, "crochet")
    assert (counted.count == 21) is (number == "21") or counted.problems
    assert bool(counted.problems) is (number == "22")


SUMS = (
    ". Total {} sts: 20 hdc and 11 sc.", " ({} sts: 20 hdc and 11 sc)", ". {} sts: 20 hdc, 11 sc",
    ". Total of {} sts: 20 hdc + 11 sc", ". 20 hdc and 11 sc, {} sts.",
)  # fmt: skip


@pytest.mark.parametrize("told", SUMS)
def test_a_sum_and_its_parts(told: str) -> None:
    row = "Sc in first st, [ch 2, sk 2, 2 hdc in next st, ch 2, sk 1, sc in next st] ten times"
    counted = count_phrase(row + told.format(31), 51, "crochet")
    assert (counted.count, counted.problems) == (31, ())


@pytest.mark.parametrize(
    ("row", "before", "after"),
    [
        ("Increase to 51 sts: (1 sc, 2 sc in next st) 17 times", 34, 51),
        ("Rnd 5: Decrease to 17: (sc2tog) 17 times", 34, 17),
        ("Inc up to 51: (1 sc, 2 sc in next st) 17 times", 34, 51),
        ("(12 sc, dec) rep 7x, 91 sts", 98, 91),
        ("sc 5 in white, sc 12 in brown, sc 5 in white, turn", 22, 22),
    ],
)
def test_what_a_row_comes_to_in_front_of_its_list(row: str, before: int, after: int) -> None:
    counted = count_phrase(row, before, "crochet")
    assert (counted.count, counted.problems) == (after, ())


@pytest.mark.parametrize(
    "row", ["dec, 7 sc, dec, 7 sc (16)", "Rnd 5: 7 sc, inc, 7 sc, inc (18)", "(5 sc, inc) x 3 (21)"]
)
def test_stitches_that_a_round_leaves_are_asked_about(row: str) -> None:
    counted = count_phrase(row, 22, "crochet")
    assert any("leave" in one.message for one in counted.problems)


def test_one_row_among_rounds_is_a_slip_of_the_label() -> None:
    text = "Buoy\n\nRnd 1: 6 sc in magic ring (6)\nRow 2: inc x 6 (12)\nRnd 3: sc around\n"
    assert count_phrase(text, None, "crochet").count == 12
