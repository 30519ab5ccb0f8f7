"""How many stitches a piece begins with, however that is told, and for how many sizes."""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern


def _counts(text: str, size: int = 0) -> list[int | None]:
    counted = count_pattern(parse_pattern(text), size)
    return [row.count for part in counted.parts for row in part.rows]


@pytest.mark.parametrize(
    "begun",
    ["c/on 40", "c.o. 40", "CO: 40 sts", "CO 40st", "cast 40 on.", "Using grey, cast 40 sts on.",
     "So, cast on your 40 stitches.", "Casting on: 40 stitches.", "40 cast on.",
     "Cast on, using the thumb method, 40 sts.", "Work a cast-on of 40 sts.",
     "You begin with forty stitches cast on.", "Cast on by the cable method 40 sts.",
     "Put 40 stitches on the needle.", "You need forty stitches on your needles.",
     "You'll want forty stitches on the needle to start.", "We have forty on the needle.",
     "Start with 40 stitches.", "Begin with 40 sts.", "40 sts on 4 mm needles.",
     "40 stitches on the long needle, join.", "Notch on 40 stitches.", "Make 40 stitches."],
)  # fmt: skip
def test_a_cast_on_in_other_words(begun: str) -> None:
    text = f"Pier cloth\nKnitting needles 4 mm.\n\n{begun}\nRow 1: k2, yo, k to end.\n"
    assert _counts(text) == [40, 41]


@pytest.mark.parametrize(
    "said",
    ["You have knitted three inches and there are 40 sts on the needle.",
     "Gauge: 40 sts and 60 rows to four inches on 4 mm needles."],
)  # fmt: skip
def test_stitches_spoken_of_are_not_cast_on(said: str) -> None:
    text = f"Pier cloth\nKnitting needles 4 mm.\n\n{said}\nCast on 12 sts.\nRow 1: k to end.\n"
    assert _counts(text)[-1] == 12


BONNET = """Deck bonnet{title}

Cast on {a} sts, garter stitch, 2 rows.
Cast off {b} sts at the beginning of the next 2 rows. There remain {c} sts.
Next row: knit, decreasing evenly to {d} sts.
"""
LISTS = (
    ("61; 67; 73", "20; 22; 24", "21; 23; 25", "15; 17; 19"),
    ("61, 67, 73", "20, 22, 24", "21, 23, 25", "15, 17, 19"),
    ("61 | 67 | 73", "20 | 22 | 24", "21 | 23 | 25", "15 | 17 | 19"),
    ("61 / 67 / 73", "20 / 22 / 24", "21 / 23 / 25", "15 / 17 / 19"),
)


@pytest.mark.parametrize("lists", LISTS)
def test_sizes_without_brackets(lists: tuple[str, str, str, str]) -> None:
    text = BONNET.format(title="", **dict(zip("abcd", lists, strict=True)))
    assert parse_pattern(text).sizes == ("size 1", "size 2", "size 3")
    assert _counts(text, 2) == [73, 73, 73, 49, 25, 19]


def test_two_sizes_with_strokes() -> None:
    text = (
        "Sea socks\n\nGet 48/60 stitches onto four needles. K2 P2 for 3/6 rounds.\n"
        "*K4, K2tog* around: 40/50.\n4 plain rounds.\n*K3, K2tog* around: 32/40.\n"
    )
    assert _counts(text, 0) == [48, 48, 48, 48, 40, 40, 40, 40, 40, 32]
    assert _counts(text, 1)[-1] == 40


def test_a_total_behind_sizes_and_a_colon() -> None:
    text = (
        "Yoke\nSizes: 3 mths (6 mths, 12 mths)\n\nCast on 60 (64, 68) sts.\n"
        "Next row: k2tog, k to last 20 (22, 24), k2tog, k18 (20, 22): 58 (62, 66) sts.\n"
    )
    assert _counts(text, 1) == [64, 62]


def test_totals_in_the_labels() -> None:
    text = (
        "Gull\n\nrow 0 (10): cast on\nrow 1 (10): p\nrow 2 (20): kfb every st\nrow 3 (20): p\n"
        "row 4 (24): *k4, kfb* every 5 sts\nrow 5-7 (24): st st\n"
    )
    assert _counts(text) == [10, 10, 20, 20, 24, 24, 24, 24]


@pytest.mark.parametrize(("size", "after"), [(0, 15), (1, 17), (2, 19)])
def test_a_change_spread_to_a_number_for_each_size(size: int, after: int) -> None:
    text = (
        "Cap\nSizes S (M, L)\n\nCast on 21 (23, 25) sts.\n"
        "Row 1: knit, decreasing evenly to 15 (17, 19) sts.\n"
    )
    assert _counts(text, size)[-1] == after


def test_stitches_added_in_the_first_row_of_a_section() -> None:
    text = (
        "Jacket\n\nBACK\nCO 52.\nRows 1-6: knit.\n\nSLEEVES\n"
        "Row 7: CO 22 at the beginning of the row, knit across all.\n"
        "Row 8: CO 22 at the beginning of the row, k3, purl to last 3 sts, k3.\n"
    )
    assert _counts(text) == [52] * 7 + [74, 96]
