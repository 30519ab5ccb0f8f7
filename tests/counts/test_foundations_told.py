"""How a foundation chain and its first row are told; common practice, no source. Twenty single
crochets stand on a chain of 21: the first chain is turned with.
"""

from __future__ import annotations

import itertools

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

BEGUN = (
    "Ch 21.", "Make 21 ch.", "Make 21 chains.", "Using blue, make 21 chains.",
    "Make a chain of 21 stitches.", "Foundation ch: 21", "Ch 20 + 1 for turning.",
    "Ch 20, plus 1 turning ch.", "Make 20 ch plus 1 to turn.", "Setup: Chain 21",
    "Chain twenty-one.", "Begin with a chain of 21.", "To begin, ch 21",
)  # fmt: skip
FIRST = (
    "sc in 2nd ch from hook and in each ch across", "sc in the 2nd ch & next 19 ch",
    "sc in 2nd ch and the next 19 ch", "Skip 1 ch, sc in each ch", "sc in 2nd chain, sc to end",
    "sc across, beginning in second chain from hook", "sc across, beg in 2nd ch from hook",
    "1 sc in 2nd ch from hook, * 1 sc in next ch; rep from * to end",
)  # fmt: skip


@pytest.mark.parametrize("begun", BEGUN)
def test_first_rows(begun: str) -> None:
    for first, label in itertools.product(FIRST, ("Row 1:", "1st row.")):
        text = f"{begun}\n{label} {first}.\nRow 2: Ch 1, turn, sc in each st across.\n"
        counted = count_pattern(parse_pattern(text))
        counts = [one.count for part in counted.parts for one in part.rows][-2:]
        assert (first, counts, counted.problems) == (first, [20, 20], ())
