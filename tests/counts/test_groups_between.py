"""Rows of groups worked between those below, stitches left free for a part, and rows called back by
a number of rows.
"""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern


def counts_of(text: str) -> list[int | None]:
    """The counts of all rows but the foundation chain."""
    counted = count_pattern(parse_pattern(text))
    assert counted.problems == ()
    rows = [row for part in counted.parts for row in part.rows]
    return [row.count for row in rows if row.label != "Start"]


SAIL = """Make 35 ch.

Foundation row: 1 dc into 2nd ch from hook, 1 dc into each ch to end: 34 dc. Turn.

1st row: 3 ch, 1 tr into 1st dc, * miss 2 dc, 3 tr into next dc; rep from * to last 3 dc, miss 2
dc, 2 tr into last dc. Turn.
"""


def test_between_edge_and_group() -> None:
    """Rows that begin beside the first group and rows that begin behind it, by turns."""
    text = SAIL + """
2nd row: 3 ch, 3 tr between first 2 tr and next group, * 3 tr between next 2 groups; rep from *
ending 3 tr between last group and last 2 tr, 1 tr into top of 3 ch. Turn.

3rd row: 3 ch, 1 tr into 1st tr, * 3 tr between next 2 groups; rep from * to end, 2 tr into top of
3 ch. Turn.

Rep 2nd and 3rd rows twice more.
"""
    assert counts_of(text) == [34, 34, 35, 34, 35, 34, 35, 34]


GROUPS = """Ch 26.

Row 1: 3 dc in 5th ch from hook, * sk 2 ch, 3 dc in next ch; rep from * to last 3 ch, sk 2 ch, dc
in last ch. Turn.

"""


@pytest.mark.parametrize(
    ("row", "count"),
    [
        ("Ch 3, * 3 dc between next 2 groups; rep from * across, dc in top of turning ch.", 20),
        ("Ch 3, 3 dc in each sp between groups across, dc in top of turning ch.", 20),
        (
            "Ch 3, 3 dc between turning ch and first group, * 3 dc between next 2 groups; rep from"
            " * across, 3 dc between last group and dc, dc in last dc.", 26,
        ),
        (
            "Ch 3, 3 dc between first dc and next group, * 3 dc between next 2 groups; rep from *"
            " across, ending with 3 dc between last group and last dc, dc in last dc.", 26,
        ),
    ],
)  # fmt: skip
def test_between_groups_of_a_flat_row(row: str, count: int) -> None:
    """Seven groups have six gaps between them, and two beside the edges."""
    assert counts_of(f"{GROUPS}Row 2: {row}") == [23, count]


ROUNDS = """Ch 4, join with sl st to form ring.

RND 1: 8 s c in ring.

RND 2: 2 s c in each s c around — 16 s c.

ROW 3: """


@pytest.mark.parametrize(
    "words",
    [
        "S c in each of next 12 s c, leaving 4 sts free for bow. Ch 1, turn.",
        "S c in each of next 12 s c, leaving 4 s c free at front. Ch 1, turn.",
        "S c in each of next 12 s c, leave 4 sts open for bow. Ch 1, turn.",
        "S c in each of next 12 s c, having 4 s c unused at end. Ch 1, turn.",
        "S c in next 6 sts, leave 4 sts free for mast, s c in each st across. Ch 1, turn.",
        "S c in next 6 sts, leave next 4 sts free for mast, ch 3, s c in last 6 sts. Turn.",
    ],
)
def test_left_free(words: str) -> None:
    """Stitches left free are worked by nothing, and asked about by nobody."""
    assert counts_of(ROUNDS + words)[-1] == 12


@pytest.mark.parametrize(
    "again",
    [
        "Repeat row 2 for 6 rows more.", "Repeat row 2 for six more rows.",
        "Rep row 2, 6 rows more.",
        "Rep 2nd row for another 6 rows.", "Repeat row 2 over the next 6 rows.",
        "Repeat row 2 until 6 rows more have been worked.", "Repeat rows 1 and 2 for 6 rows more.",
        "Repeat last 2 rows for 6 rows.",
    ],
)
def test_rows_called_back_by_rows(again: str) -> None:
    """So many rows, not an unknown number."""
    text = "Ch 19.\n\nROW 1: S c in 2nd ch from hook and in each ch across. Ch 1, turn.\n\n"
    text += f"ROW 2: S c in each s c across. Ch 1, turn.\n\n{again}"
    assert counts_of(text) == [18] * 8


@pytest.mark.parametrize(
    "close",
    ["sl st in 3rd st of ch-4 first made", "sl st in 3rd ch of ch-4 made first",
     "sl st in 3rd ch of ch-4 made at beginning", "sl st in 3rd st of ch-4"],
)  # fmt: skip
def test_the_chain_first_made_is_no_picot(close: str) -> None:
    """The chain before the slip stitch is the round's last space."""
    text = "Ch 8, join with sl st to form ring.\n\n1st rnd: Ch 3, 17 d c in ring, join.\n\n"
    text += f"2nd rnd: Ch 4, * d c in next d c, ch 1; repeat from * around, {close}.\n\n"
    text += "3rd rnd: Sl st in next sp, ch 3, d c in same sp, * ch 1, 2 d c in next sp; repeat from"
    assert counts_of(f"{text} * around, ending with ch 1, join.") == [18, 18, 36]
