"""What is told behind a row's words and works none of its stitches: slip stitches that level the
end, how the piece grows. Common practice, no source; the texts are invented.
"""

import pytest

from reader.app.check import as_json
from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern


def _counts(text: str) -> list[int | None]:
    told = as_json(count_pattern(parse_pattern(text), 0))
    return [row["count"] for part in told["parts"] for row in part["rounds"]]


LEVELS = (
    "At the end of the last of these work s.s. into the last 3 sts. so that the edge is level.",
    "Sl st in next 2 sts to level off.",
    "Finish with sl st in the next 2 sts to even out the edge.",
    "End with 2 sl sts so the edge is even.",
    "Slip stitch into the next two stitches to hide the jog.",
)  # fmt: skip


@pytest.mark.parametrize("level", LEVELS)
def test_slip_stitches_that_level_an_end(level: str) -> None:
    text = (
        "Float cap\n\nRnd 1: 6 sc in ring.\nRnd 2: 2 sc in each sc.\n"
        f"Next 5 rounds: 1 sc into each sc. {level}\nFasten off.\n"
    )
    assert _counts(text) == [6, *[12] * 6]


@pytest.mark.parametrize(
    "rounds",
    [
        "Rnds 3-7: sc in each sc, sl st in next 2 sts, fasten off.",
        "Rnds 3-7: 12 sc. Slip st 2, FO.",
        "Rnds 3 to 7: sc around, sl st in next st and break off.",
    ],
)  # fmt: skip
def test_slip_stitches_behind_several_rounds(rounds: str) -> None:
    text = f"Float cap\n\nRnd 1: 6 sc in ring.\nRnd 2: 2 sc in each sc around.\n{rounds}\n"
    assert _counts(text) == [6, *[12] * 6]


GROWTH = (
    "The 6tr of each V-shell are worked as ordinary sts on the row that follows, so every row "
    "grows by 6 sts.",
    "So every row grows by 6 sts.", "Each row is 6 sts longer than the one before.",
    "Note that the work grows by 6 sts in each row.", "You add 6 trebles per row.",
    "The panel gets wider by 6 sts a row.",
)  # fmt: skip


@pytest.mark.parametrize("growth", GROWTH)
def test_what_is_said_of_growth_works_nothing(growth: str) -> None:
    text = (
        "Quay panel\n\nUK terms.\nV-shell = 3tr, 2ch, 3tr in same place\n\nFoundation: make 60ch.\n"
        "Row 1: Miss first 3ch (counts as 1tr), 1tr in each of next 28ch, V-shell in next ch, "
        "1tr in each ch to end, turn. [63 tr]\n"
        "Row 2: 3ch (counts as first tr), 1tr in each tr to 2ch-sp, V-shell in 2ch-sp, 1tr in each "
        f"tr to end, turn. [69 tr]\n{growth}\nRows 3-5: Rep Row 2 a further 3 times. [87 tr]\n"
    )
    assert _counts(text) == [63, 69, 75, 81, 87]
