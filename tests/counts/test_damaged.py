"""Texts that a slip of the pen made, which once broke the counting."""

from __future__ import annotations

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

MITTEN = """Mitten
CO 40 sts, divide on 4 dpns, join.
Rnd 1: K20, pm, 1, k93, m1, pm, k to end. (42 sts)
Rnd 2: Knit.
Rnd 3: K to marker, sm, m1, k to marker, m1, sm, k to end. (44 sts)
Rnd 4: Knit.
Rep rnds 3 and 4 until there are 9 sts between markers.
"""
"""More stitches are told between the markers than are on hand."""


def test_no_count_below_nothing() -> None:
    """What the rows cannot tell is not counted."""
    rows = count_pattern(parse_pattern(MITTEN)).parts[0].rows
    assert all(row.count is None or row.count >= 0 for row in rows)


def test_no_more_is_taken_away_than_there_is() -> None:
    """A printed decrease of more stitches than are on hand is no total."""
    text = "Cast on 6 sts.\nRow 1: K to end.\nRow 2: K2tog to end. (decreased 8 sts)"
    rows = count_pattern(parse_pattern(text)).parts[0].rows
    assert all(row.count is None or row.count >= 0 for row in rows)


def test_left_unworked_with_a_slip() -> None:
    """A word that only begins as the one looked for ends the phrase all the same."""
    text = "Row 1: Ch 9.\nRow 2: Sc in next 8 sts, leaving remaining sts unworkedd."
    assert count_pattern(parse_pattern(text)).parts


def test_a_row_that_breaks_off_in_an_open_bracket() -> None:
    """A number is followed by nothing where a binding off was looked for."""
    text = "Cast on 20 sts.\nRow 1: K to end.\nRow 2: k2, p to last 2 sts, k2. 6 ("
    assert count_pattern(parse_pattern(text)).parts
