"""Edgings of shells worked back and forth, and rows that widen in the space at their middle."""

from __future__ import annotations

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern


def counts(words: str) -> list[int | None]:
    """The counts of a text's rows, of which none is asked about."""
    found = count_pattern(parse_pattern(words))
    assert not found.problems
    rows = [row for part in found.parts for row in part.rows if row.label != "Start"]
    return [row.count for row in rows]


def test_a_strip_of_one_shell_keeps_its_stitches() -> None:
    """The long chain at its edge is a loop for the border, and no stitch."""
    words = """Buoy rope edging

    Ch 4, 2 d c in 4th st from hook, ch 2, 3 d c in same space, ch 6, turn.
    2nd Row. 3 d c, ch 2, 3 d c (shell) in ch 2 loop, ch 6, turn.
    3rd Row. Shell in center of shell, ch 6, turn.
    4th Row. Shell in center of shell, ch 6, turn.
    5th Row. Shell in center of shell, ch 6, turn.
    """
    assert counts(words) == [6, 6, 6, 6, 6]


def test_a_row_widens_in_the_space_that_is_told_behind_it() -> None:
    words = """Pennant

    Ch 20. Row 1: Dc in 4th ch from hook and in each of next 7 ch, (dc, ch 2, dc) in next ch, dc in
    each of last 8 ch. Ch 3, turn.
    Row 2: Skip first dc, dc in each dc across, making 2 dc, ch 2 and 2 dc in ch-2 sp. Ch 1, turn.
    Row 3: Sc in first dc, sc in each dc across, making 3 sc in ch-2 sp. Ch 1, turn.
    """
    assert counts(words) == [19, 23, 26]


def test_the_chain_of_the_row_below_is_the_one_it_was_turned_with() -> None:
    words = """Quay edging

    Ch 20. Row 1: Dc in 4th ch from hook and in each ch across. Ch 3, turn.
    Row 2: Skip first dc, dc in each of next 16 dc, dc in the ch 3 of previous row. Ch 3, turn.
    Row 3: Skip first dc, dc in each of next 16 dc, dc in top of ch 3 of the row below.
    """
    assert counts(words) == [18, 18, 18]
