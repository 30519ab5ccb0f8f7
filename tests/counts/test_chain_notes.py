"""Sentences that say whether turning chains are stitches; common practice, no source."""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern
from reader.text.chain_notes import chain_notes, without_chain_notes

COUNT = (
    "The turning chain counts as a stitch throughout.", "3 ch counts as first dc.",
    "Note: turning ch counts as 1 dc.", "The first 3 ch of every row is counted as a dc.",
    "3 ch at the beginning of rows is counted as one stitch.", "Turning chains count as stitches.",
    "NB. The 3 ch at the start of a row takes the place of the first dc.",
    "The 3 turning chain replaces the first dc of every row.", "All turning ch count as 1 dc.",
    "Every row begins with 3 ch, which counts as the first dc.", "I count the 3 turning ch as a "
    "stitch.", "Count the 3 ch at the beginning of a row as 1 st.", "Begin each row with 3 ch "
    "(counts as first dc).", "The 3 ch that begin a row are your first dc.",
    "Throughout, 3 ch counts as the first dc of the row.",
)  # fmt: skip
COUNT_NOT = (
    "The turning chain does not count as a stitch.", "Turning chains are not counted.",
    "The 3 ch at the start of each row does not count.", "Do not count the turning ch.",
    "The turning ch isn't counted as a stitch.", "3 ch at beg of row is not a st.",
    "Don't count the 3 ch as a stitch.", "None of the turning chains count as a stitch.",
    "Starting chains don't count as stitches in this pattern.",
)  # fmt: skip
PLACES = ("{}\n\nMake 22 ch.\n", "Notes\n- Work loosely.\n- {}\n\nMake 22 ch.\n",
          "Make 22 ch. {}\n")  # fmt: skip


def counts(said: str, place: str, second: str) -> list[int | None]:
    """Two rows over 22 chains behind such a note."""
    counted = count_pattern(parse_pattern(
        f"WINDSOCK\nUS terms.\n{place.format(said)}"
        "Row 1: 1 dc in 4th ch from hook, 1 dc in each ch to end. Turn.\n"
        f"Row 2: 3 ch, 1 dc in {second}each st to end. Turn.\n"
    ))  # fmt: skip
    assert counted.problems == ()
    return [row.count for part in counted.parts for row in part.rows][-2:]


@pytest.mark.parametrize("place", PLACES)
@pytest.mark.parametrize("said", COUNT)
def test_they_count(said: str, place: str) -> None:
    assert counts(said, place, "next st and in ") == [20, 20]


@pytest.mark.parametrize("place", PLACES)
@pytest.mark.parametrize("said", COUNT_NOT)
def test_they_do_not(said: str, place: str) -> None:
    assert counts(said, place, "") == [19, 19]


@pytest.mark.parametrize(
    "work",
    ["5 chain, to stand for 1 treble and 2 chain, 1 treble in the ring.",
     "Ch 3 (counts as dc), dc in next st.", "In Row 5 the ch 3 counts as a dc."],
)  # fmt: skip
def test_work_is_no_note(work: str) -> None:
    assert list(chain_notes(work)) == []
    assert without_chain_notes(f"Row 1: {work}") == f"Row 1: {work}"
