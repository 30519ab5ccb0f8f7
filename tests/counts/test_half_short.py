"""Names of stitches that are shortened by half are the short names."""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern
from reader.text.half_short import wholly_short

COWL = """Harbour cowl
Ch 30, {slip} in first ch to form a ring.
Rnd 1: Ch 4, dc in same st, *skip 2 sts, {v} in next st; rep from * around, {slip} to top of ch 3.
Rnd 2: {slip} in ch-1 sp, ch 4, dc in same sp, {v} in ch-1 sp of each {v} around, {slip}.
"""


def counts_of(text: str) -> list[int | None]:
    """The count of every row."""
    return [row.count for part in count_pattern(parse_pattern(text)).parts for row in part.rows]


@pytest.mark.parametrize(
    "said", ["sl stitch", "sl. stitch", "Sl Stitch", "slipstitch", "slip stich"]
)
def test_a_slip_stitch_by_any_name(said: str) -> None:
    """Counted as "sl st" is."""
    counts = counts_of(COWL.format(slip="sl st", v="V-st"))
    assert counts[-1]
    assert counts_of(COWL.format(slip=said, v="V-st")) == counts


def test_a_v_stitch() -> None:
    """Worked, and worked into, under its longer name."""
    counts = counts_of(COWL.format(slip="sl st", v="V-st"))
    assert counts_of(COWL.format(slip="sl st", v="V-stitch")) == counts


@pytest.mark.parametrize(
    "text", ["V-Stitch Cowl", "Slip the stitch to the needle", "Whipstitch", "Cluster stitches: 9"]
)
def test_what_is_no_such_name_stays(text: str) -> None:
    """A title keeps its words, and so does everything that is told otherwise."""
    assert wholly_short(text) == text


@pytest.mark.parametrize(
    "said", ["sl. stitches in ring", "slipstitch, turn", "V-stitches across", "St stitch, 4 rows"]
)
def test_length_is_kept(said: str) -> None:
    """Every later place points into the maker's text."""
    assert len(wholly_short(said)) == len(said)
    assert wholly_short(said) != said


@pytest.mark.parametrize(
    "begun", ["Using 4mm needles C/O 60 {}.", "Cast 60 {} on 3 needles.", "CO  60 {}."]
)
@pytest.mark.parametrize("noun", ["sts", "stitches"])
def test_a_cast_on_in_full_words(begun: str, noun: str) -> None:
    """So many "stitches" are cast on as so many "sts" are."""
    text = f"Harbour cap\n\n{begun.format(noun)}\nNext rnd: *K1, p1; rep from * to end."
    assert counts_of(text) == [60, 60]
