"""How many chains a piece begins with, however its author tells it and whatever stands above it;
texts of our own invention.
"""

from __future__ import annotations

import pytest

from reader.app.check import as_json
from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

STARTS = [
    "Chain a multiple of 3, e.g. 33.", "Ch a multiple of 3 (sample: 33).",
    "Make a chain with a multiple of 3. I made 33.", "Ch any multiple of 3; mine is 33.",
    "Start with a chain that is a multiple of 3 (I used 33 chains).", "Chain 30, then ch 3 more.",
    "Ch 30, ch 3 more for the turn.", "Chain a multiple of 3 plus 0, e.g. 30, then ch 3 more.",
    "Chain a multiple of 3 (for example 30), plus 3 more for the first dc.",
    "Chain in multiples of 3 (I did 30) and add 3 chains.",
    "Ch a multiple of 3. For my scarf I chained 33.", "Foundation: a multiple of 3 ch. (33)",
    "To begin, ch 33.", "Base chain of 33.", "Begin with 33 ch.", "Loosely chain thirty-three.",
    "Leaving a long tail, ch 33.", "33 ch.", "33 chains.", "Foundation chain: chain 33.",
    "Set up: ch 33.", "Foundation row: 33 ch.", "Row 0: ch 33.",
]  # fmt: skip
ABOVE = ["", "Mooring mat\n\nMaterials: yarn, hook\n\n", "MAT\n"]
ROWS = "Row 1: Dc in 4th ch from hook and in each ch across.\nRow 2: Ch 3, turn, dc in each st."


def counts_of(text: str) -> list[tuple[str, int | None]]:
    told = as_json(count_pattern(parse_pattern(text), 0))
    return [(one["label"], one["count"]) for part in told["parts"] for one in part["rounds"]]


@pytest.mark.parametrize("start", STARTS)
@pytest.mark.parametrize("above", ABOVE)
def test_chains_told(start: str, above: str) -> None:
    counts = counts_of(f"{above}{start}\n{ROWS}")
    assert [count for label, count in counts if label in ("1", "2")] == [31, 31]
    assert all(count == 33 for label, count in counts if label not in ("1", "2"))
