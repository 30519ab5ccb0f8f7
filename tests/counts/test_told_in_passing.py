"""What leaflets tell in passing: how many a row makes, what its chain counts for, the chain behind
a plain row, how often one decrease is worked, the total of rows worked by turns.
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


CHAIN = "Ch 42.\n\n1st row: Half d c in 3rd ch from hook and in each ch across"


@pytest.mark.parametrize(
    "behind",
    [
        "—40 half d c (turning ch not counted). Ch 2, turn.",
        ": 40 half d c (ch-2 does not count as a st), turn.",
        " —40 half d c, not counting turning ch. Ch 2, turn.",
        "—40 half d c; turning ch is not counted. Ch 2, turn.",
        " making 40 half d c (turning ch not counted). Turn.",
        " (40 half d c—turning ch not counted). Ch 2, turn.",
        "—40 half d c (not including ch 2 at beg). Turn.",
        ": 40 hdc. Turn.",
        ", thus making 40 half d c. Turn.",
        " being 40 half d c.",
        " (making 40 half d c). Turn.",
    ],
)
def test_what_a_row_makes(behind: str) -> None:
    """However it is told: never forty in each."""
    assert counts_of(f"{CHAIN}{behind}\n\n2nd row: Half d c in each st across.") == [40, 40]


@pytest.mark.parametrize(
    "along",
    ["on ch", "over the chain", "along ch", "down the starting chain", "on length of ch"],
)
def test_so_many_along_a_chain_of_no_number(along: str) -> None:
    """They are worked once."""
    text = f"Make a chain 12 inches long.\n\n1st row: 60 s c evenly {along}, ch 1, turn."
    assert counts_of(text + "\n\n2nd row: S c in each s c.") == [60, 60]


@pytest.mark.parametrize("behind", ["Ch 2, turn.", "Turn with ch 2.", "Turn, ch 2.", "Ch 2. Turn."])
def test_turned_behind_a_plain_row(behind: str) -> None:
    """The chain is no new foundation."""
    text = f"{CHAIN}. Ch 2, turn.\n\n2nd row: Work even. {behind}\n\n3rd row: Hdc in each st."
    assert counts_of(text) == [40, 40, 40]


def test_rows_by_turns_with_the_total_of_the_last() -> None:
    """The decrease stands in the first of the two."""
    text = (
        f"{CHAIN}. Ch 2, turn.\n\n2nd row: Dec over first 2 sts, hdc in each st to within last 2"
        " sts, dec over last 2 sts. Ch 2, turn.\n\n3rd row: Work even. Ch 2, turn.\n\n"
        "4th to 7th rows: Repeat 2nd and 3rd rows alternately twice. 34 sts.\n\n"
        "8th row: Dec over first 2 sts twice, work across to within last 4 sts, dec over next 2"
        " sts twice. Ch 2, turn."
    )
    assert counts_of(text) == [40, 38, 38, 36, 36, 34, 34, 30]


def test_so_often_of_nothing_known_is_asked_about() -> None:
    """A number of times that could not be read is no remark."""
    text = "Ch 31.\n\nRow 1: Sc in 2nd ch from hook and in each ch across.\n\n"
    text += "Row 2: Ch 3, dc in next 3 sts, 2 dc in next st twice, dc in each st across."
    assert count_pattern(parse_pattern(text)).problems
