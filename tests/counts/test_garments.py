"""Garments told in running text: rows without labels, second sides, pieces told by one before."""

from __future__ import annotations

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

SLIPOVER = """Harbour Slipover

BACK: With Navy, ch 42, hdc in 3rd ch from hook and in each remaining ch, ch 2, turn. 2nd ROW: Hdc
in space between next 2 sts, repeat from beg across row, working last hdc in top of ch 2, ch 2,
turn. Repeat last row throughout working 2 rows each Navy, White, Sand and Red, cutting yarn at end
of each 2nd row. SHAPE ARMHOLES: Sl st across 3 sts, work to within last 3 sts, turn. NEXT ROW: Dec
1 st at beg and end of row. Work even until armholes measure 8 inches from 1st dec. SHOULDERS: Work
across 10 sts, ch 2, turn. Work across 5 sts, cut yarn. Skip 12 sts for neck, attach yarn in next
st and work across remaining sts. NEXT ROW: Sl st across 5 sts, work across remaining sts, cut yarn.

POCKET: With White ch 12, work in pattern for 4 rows, then work 2 rows Sand and 2 rows Red.
"""


def counts_of(text: str) -> dict[str, list[int | None]]:
    """The counts of each part, by its name."""
    parts = count_pattern(parse_pattern(text)).parts
    return {part.name: [row.count for row in part.rows if row.label != "Start"] for part in parts}


def test_rows_in_running_text_are_rows_of_their_own() -> None:
    """Shoulders, the second side over the stitches that were left, and a stripe of so many rows."""
    back = counts_of(SLIPOVER)["BACK"]
    assert back == [*[40] * 8, 34, 32, 32, 10, 5, 10, 5]


def test_a_pocket_is_worked_in_the_pattern_of_the_back() -> None:
    """Its first row is the back's first row over its own chain."""
    assert counts_of(SLIPOVER)["POCKET"] == [10] * 8
