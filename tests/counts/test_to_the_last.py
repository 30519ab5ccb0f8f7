"""Lists repeated until so much is left; common practice, no source."""

from __future__ import annotations

import pytest

from reader.counts.account import count_pattern
from reader.pattern.parser import parse_pattern

FRAMES = ("*{}* {}, {}", "({}) {}, {}", "[{}] {}, {}", "*{}; rep from * {}, {}", "*{}* rep {}; {}")


@pytest.mark.parametrize("frame", FRAMES)
@pytest.mark.parametrize(
    "far",
    [
        "until 3 are left", "until 3 ch remain", "till there are 3 ch left", "up to the last 3 ch",
        "leaving 3 ch", "until you have 3 ch left", "until only 3 ch remain",
        "until three ch are left", "until 3 from the end",
    ],
)  # fmt: skip
def test_so_much_is_left(frame: str, far: str) -> None:
    row = frame.format("sk 2 ch, 3 dc in next ch", far, "sk 2, dc in last ch")
    counted = count_pattern(parse_pattern(f"Ch 62\nRow 1: 3 dc in 5th ch from hook, {row}.\n"))
    assert [one.count for part in counted.parts for one in part.rows][-1] == 59
    knitted = frame.format("k2, p1", far.replace("ch", "sts"), "k3")
    counted = count_pattern(parse_pattern(f"CO 63 sts\nRow 1: k3, {knitted}.\nRow 2: purl\n"))
    assert [one.count for part in counted.parts for one in part.rows] == [63, 63, 63]
    assert counted.problems == ()


def test_what_remains_at_the_end_is_no_such_place() -> None:
    """A spiral is worked on until so many are left."""
    text = "Rnd 1: 12 sc in ring.\nRnd 2: (sc2tog) until 6 sts remain.\n"
    counted = count_pattern(parse_pattern(text))
    assert [one.count for part in counted.parts for one in part.rows] == [12, 6]


@pytest.mark.parametrize("where", ["the middle of each V", "each V", "ch-1 sp of each V"])
def test_a_v_by_its_letter_alone(where: str) -> None:
    text = (
        "V = (dc, ch 1, dc) in the same place.\n\nCh 20\nRow 1: V in 5th ch from hook, "
        "*skip 2 ch, V in next ch; rep from * to last 3 ch, skip 2 ch, dc in last ch. (12)\n"
        f"Row 2: ch 3, turn. V in {where}, dc in top of turning ch.\nRow 3: rep row 2\n"
    )
    counted = count_pattern(parse_pattern(text))
    assert [one.count for part in counted.parts for one in part.rows][1:] == [12, 12, 12]
    assert counted.problems == ()


@pytest.mark.parametrize(
    "row",
    [
        "(sc2tog) until 6 sts remain.", "sc2tog around until 6 sts remain",
        "*sc2tog* until 6 are left", "*sc2tog; rep from * until there are 6 sts left.",
        "dec around until 6 sts remain (6)",
    ],
)  # fmt: skip
def test_two_together_until_so_many_are_left(row: str) -> None:
    counted = count_pattern(parse_pattern(f"Rnd 1: 12 sc in ring.\nRnd 2: {row}\n"))
    assert [one.count for part in counted.parts for one in part.rows] == [12, 6]
    assert counted.problems == ()
