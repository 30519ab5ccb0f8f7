"""Labelled rows that only name a fabric, rows that are called lines, and changes spread over a row
in other words.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern


def _counts(text: str) -> list[int | None]:
    counted = count_pattern(parse_pattern(text))
    return [row.count for part in counted.parts for row in part.rows]


@pytest.mark.parametrize(
    "words",
    ["2x2 rib.", "1 x 1 rib", "garter.", "moss stitch", "rib", "st st.", "double rib",
     "garter stitch, two rows grey, two rows white, turn about",
     "st st: 2 rows A, 2 rows B"],
)  # fmt: skip
def test_a_fabric_alone_is_a_row(words: str) -> None:
    text = f"Buoy cover\n\nCast on 44.\nRows 1-4: {words}\nRow 5: knit.\n"
    assert _counts(text) == [44] * 6


def test_lines_are_rows() -> None:
    text = (
        "Sail\n\ncast on 5\nline 1   k2 yo k1 yo k2 ...... 7\nline 2   purl\n"
        "line 3   k3 yo k1 yo k3 ...... 9\nline 4   purl\n"
    )
    assert _counts(text) == [5, 7, 7, 9, 9]


def test_short_labels_behind_a_word_that_goes_on() -> None:
    text = (
        "Float\n\ncast on 36\nr1 - k1, ssk, k 30, k2tog, k1\nr2 - knit\n"
        "r3 - k1, ssk, k 28, k2tog, k1\nr4 - p\n"
    )
    assert _counts(text) == [36, 34, 34, 32, 32]


@pytest.mark.parametrize(
    ("words", "after"),
    [("narrow evenly until 50 remain", 50), ("narrow evenly to 36", 36), ("lose 8 sts evenly", 52),
     ("reduce evenly to 48 sts", 48), ("knit, losing 4 sts evenly spaced", 56),
     ("widen evenly to 66 sts", 66)],
)  # fmt: skip
def test_changes_spread_in_other_words(words: str, after: int) -> None:
    assert _counts(f"Cap\n\nCast on 60. Join.\nRound 1: knit.\nNext round: {words}.\n")[-1] == after


@pytest.mark.parametrize(
    "key",
    ["(kt = knit into front and back = 1 more)", "kt = knit into front and back (makes 1)",
     "Abbreviations: kt: knit into the front and the back of the stitch, one more.",
     'Before you begin: "kt" means knit into the front and back of the same stitch.'],
)  # fmt: skip
def test_a_key_outside_its_own_line(key: str) -> None:
    text = f"Cosy\n{key}\n\nCast on 44.\nRow 1: k2, [kt, k3] to last 2, k2.\n"
    assert _counts(text)[-1] == 54


def test_a_key_whose_gain_is_another_is_not_taken() -> None:
    text = "Cosy\nkt = knit into front and back (adds 2)\n\nCast on 44.\nRow 1: kt, k to end.\n"
    assert count_pattern(parse_pattern(text)).problems
