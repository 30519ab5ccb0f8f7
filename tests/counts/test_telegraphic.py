"""Short sentences without a label, with their totals behind a colon or a stop: none is dropped, and
where the words are not read the printed total is taken and asked about.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

HEAD = "Pier cloth\n\nCast on 40 sts.\nRow 1: knit.\n"


@pytest.mark.parametrize(
    ("words", "after"),
    [("Kfb in every st: 80.", 80), ("M1 after every 4th st: 50.", 50), ("Dec 1 on 4 rows: 36.", 36),
     ("Take in 1 at each end of the next row: 38.", 38), ("Put 10 on a thread: 30.", 30),
     ("Rib 10 rows, last row inc 2: 42.", 42), ("Knit 1 round dec 4 sts: 36.", 36),
     ("Every 3rd and 4th st together: 30.", 30), ("Two together all the way: 20.", 20),
     ("Take in 4 evenly. 36.", 36), ("Double the stitches: 80.", 80),
     ("Then k2, k2tog all round: 30.", 30), ("Increase in every st: 80.", 80),
     ("Lose one each side in the next 3 rows: 34.", 34)],
)  # fmt: skip
def test_a_printed_total_is_never_passed_over(words: str, after: int) -> None:
    counted = count_pattern(parse_pattern(f"{HEAD}{words}\nNext row: knit.\n"))
    assert counted.parts[-1].rows[-1].count == after
    assert any(after == row.count and "knit." not in row.written for row in counted.parts[-1].rows)


def test_rows_told_by_how_many_they_are() -> None:
    text = f"{HEAD}Four rows: k2, p2 rib.\n3 rows: knit.\nOne row: k2tog, k to end.\n"
    rows = count_pattern(parse_pattern(text)).parts[-1].rows
    assert [row.count for row in rows] == [40] * 9 + [39]


SIZED = (
    ("(88) 96 (104) 112 sts", "(44) 48 (52) 56"),
    ("88 . 96 . 104 . 112 sts", "44 . 48 . 52 . 56"),
    ("[88 96 104 112] sts", "[44 48 52 56]"),
    ("[88, 96, 104, 112] sts", "[44, 48, 52, 56]"),
    ("b 88, c 96, t 104, a 112 sts", "b 44, c 48, t 52, a 56"),
)


@pytest.mark.parametrize(("first", "half"), SIZED)
def test_lists_of_sizes_in_other_marks(first: str, half: str) -> None:
    text = f"Collar\n\nCast on {first}.\nRow 1: k2tog to end: {half}.\nRow 2: knit: {half}.\n"
    counted = count_pattern(parse_pattern(text), 2)
    assert len(parse_pattern(text).sizes) == 4
    assert [row.count for row in counted.parts[-1].rows] == [104, 52, 52]


PARTED = (
    ("88; 96; 104; 112", "44; 48; 52; 56"),
    ("88.. 96.. 104.. 112", "44.. 48.. 52.. 56"),
    ("88, 96, 104, 112", "44, 48, 52, 56"),
    ("88 96 104 112", "44 48 52 56"),
)


@pytest.mark.parametrize(("first", "half"), PARTED)
def test_sizes_parted_by_anything(first: str, half: str) -> None:
    text = (
        f"Collar\n\nCast on {first} sts.\nRow 1: k2tog to end: {half}.\nRow 2: knit: {half}.\n"
        f"Row 3: purl: {half}.\n"
    )
    rows = count_pattern(parse_pattern(text), 3).parts[-1].rows
    assert [row.count for row in rows] == [112, 56, 56, 56]


def test_numbers_listed_in_one_bracket_stay() -> None:
    text = (
        "Top\n\nCO 82, (92, 100, 110, 118) sts.\nRow 1: knit. 82, (92, 100, 110, 118) sts\n"
        "Row 2: purl. 82, (92, 100, 110, 118) sts\nRow 3: knit. 82, (92, 100, 110, 118) sts\n"
    )
    assert len(parse_pattern(text).sizes) == 5
    assert count_pattern(parse_pattern(text), 4).parts[-1].rows[-1].count == 118


def test_totals_in_a_column() -> None:
    text = (
        "WATCH CAP\n\ncast on 110, join                  110\n"
        "dec round: *k3, p2tog* to end             88\nk2, p2, to end           88\n"
        "2nd dec round: *k2, p2tog* to end     66\nk2, p1 to end         66\n"
    )
    rows = count_pattern(parse_pattern(text)).parts[-1].rows
    assert [row.count for row in rows][-4:] == [88, 88, 66, 66]


def test_a_range_of_rows_and_then_the_cast_off() -> None:
    rows = count_pattern(parse_pattern(f"{HEAD}Rows 2-4: Knit. BO.\n")).parts[-1].rows
    assert [row.count for row in rows] == [40, 40, 40, 40, 40, 0]
