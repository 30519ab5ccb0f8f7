"""Rounds in other frames: in capitals in a narrow column, with a label of several rounds
"inclusive", with the last stitch passed over; common practice, no source.
"""

from __future__ import annotations

import textwrap

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

ROUNDS = (
    "Ch 1, 12 sc in ring, join with sl st to first sc.",
    "Ch 1, sc in same st, ch 3, sk next st, *sc in next st, ch 3, sk next st; rep from * around, "
    "join with sl st to first sc.",
    "Ch 1, *(sc, hdc, 3 dc, hdc, sc) in next ch-3 sp; rep from * around, join with sl st to first "
    "sc.",
    "Ch 1, *sc in next st, ch 5, sk next 6 sts; rep from * around, join with sl st to first sc.",
)
RING = "Ch 5, join with sl st to form a ring."


def counts(text: str) -> list[int | None]:
    """The counts of all rounds."""
    counted = count_pattern(parse_pattern(text))
    rows = [one for part in counted.parts for one in part.rows if one.label != "Start"]
    return [one.count for one in rows]


@pytest.mark.parametrize("label", ["Rnd {}: ", "Round {}. ", "R{}: ", "{}. ", "Rnd {} — "])
@pytest.mark.parametrize("width", [38, 40, 48])
def test_capitals_in_a_column(label: str, width: int) -> None:
    lines = [f"{label.format(n)}{words}" for n, words in enumerate(ROUNDS, 1)]
    told = "\n".join(textwrap.fill(one.upper(), width) for one in (RING, *lines))
    assert counts(told) == [12, 6, 42, 6]


@pytest.mark.parametrize(
    "label", ["Rnds 3 to 5 inclusive:", "Rounds 3 to 5 incl.:", "Rnds 3-5 (incl.):"]
)
def test_rounds_inclusive(label: str) -> None:
    text = f"Rnd 1: 6 sc in MR\nRnd 2: inc x 6\n{label} sc in each st\nRnd 6: (sc, inc) x 6\n"
    assert counts(text) == [6, 12, 12, 12, 12, 18]


@pytest.mark.parametrize("times", ["repeat from * 6 more times", "rep from * 6 times more"])
def test_the_last_is_passed_over(times: str) -> None:
    text = (
        "Ch 8, join to form a ring.\nRnd 1: Ch 1, 16 sc in ring, join with sl st to first sc.\n"
        f"Rnd 2: Ch 5 (counts as dc and ch 2), *sk next st, dc in next st, ch 2; {times}, join "
        "with sl st to 3rd ch of ch-5.\n"
    )
    counted = count_pattern(parse_pattern(text))
    assert counts(text) == [16, 8]
    assert not counted.problems
