"""A first round around both sides of a chain, in many wordings; texts of our own invention. Along
the second side lie as many chains as along the first, without the end that was gone around (common
practice, no source).
"""

from __future__ import annotations

import pytest

from reader.app.check import as_json
from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

FIRST = ["Sc in 2nd ch from hook and in next 7 ch", "Starting in 2nd ch from hook, sc in next 8 ch",
         "Sc in 2nd ch from hook and in each ch to last ch"]  # fmt: skip
ENDS = ["3 sc in last ch", "work 3 sc into last ch"]
LEADS = [
    "working on other side of ch, ", "do not turn, working along the other side, ",
    "continue on the other side of the foundation chain, ", "(work on the other side) ",
    "rotate and work in the unused loops of the ch, ",
]  # fmt: skip
SECOND = ["sc in next 7 ch, 2 sc in last ch", "sc in each ch to last ch, 2 sc in last ch"]


def counts_of(text: str) -> tuple[list[int | None], int]:
    read = as_json(count_pattern(parse_pattern(text), 0))
    counts = [one["count"] for part in read["parts"] for one in part["rounds"]]
    return counts, len(read["problems"])


@pytest.mark.parametrize("first", FIRST)
@pytest.mark.parametrize("end", ENDS)
@pytest.mark.parametrize("lead", LEADS)
def test_around_both_sides(first: str, end: str, lead: str) -> None:
    for second in SECOND:
        row = f"Rnd 1: {first}, {end}, {lead}{second}"
        assert counts_of(f"Ch 10.\n{row}\nRnd 2: sc in each st around.") == ([20, 20], 0), second


def test_both_sides_alike() -> None:
    row = "Sc in 2nd ch from hook and in each ch across, working on other side of ch, sc in each ch"
    assert counts_of(f"Ch 10.\nRnd 1: {row} across.")[0] == [18]
