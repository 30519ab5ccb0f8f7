"""Totals among words that only speak of them, held against the row; common practice, no source."""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern
from reader.text.totals_spoken_of import spoken_totals

SAID = (
    "{} again.", "Still {}.", "{} now.", "{} sts now.", "Check: {} stitches.", "{} sts tot.",
    "({} total)", "(total now {})", "(no change: {})", "(st count {})", "({} still?)",
    "I make it {}.", "Tally {}.", "Makes {}.", "Gives {}.", "{}, unchanged.", "{} as before.",
    "No change, {}.", "Stays at {}.", "In all {}.", "{} on the hook side.", "({} of them)",
    "{} = done.", "Looking good at {}.",
)  # fmt: skip


def problems(said: str, last: int) -> tuple[list[int | None], int]:
    """The counts of a float whose third round is said to hold so many, and how many questions."""
    rows = (("6 sc in magic ring", 6), ("2 sc in each st around", 12), ("*sc, inc* around", last))
    counted = count_pattern(parse_pattern("FLOAT\n\n" + "".join(
        f"Rnd {at}: {words}. {said.format(total)}\n" for at, (words, total) in enumerate(rows, 1)
    )))  # fmt: skip
    return [row.count for part in counted.parts for row in part.rows], len(counted.problems)


@pytest.mark.parametrize("said", SAID)
def test_total_is_held_against_the_row(said: str) -> None:
    assert problems(said, 18) == ([6, 12, 18], 0)
    assert problems(said, 19)[1] == 1


@pytest.mark.parametrize(
    "row",
    [
        "Rnd 2: sc in next 5 again.", "Rnd 2: ch 4 again.", "Rnd 2: sc in the first 6 now.",
        "Rnd 4: row 2 again", "Rnd 2: *sc, inc* x 6 again.", "Work 20 now.",
        "Rnd 2: rep rows 2 and 3 again.",
    ],
)  # fmt: skip
def test_work_stays(row: str) -> None:
    assert spoken_totals(row) == row
