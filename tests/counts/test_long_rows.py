"""Long rows: passes that are alike are counted at once, and come out as if each were worked."""

from __future__ import annotations

from random import Random

import pytest

from reader.counts.account import count_pattern
from reader.counts.counted import Verdict
from reader.counts.fabric import GAP, Below, Run, added
from reader.counts.steady import Stride
from reader.counts.tally import Choice, Tally
from reader.counts.walk import Walk
from reader.pattern.parser import parse_pattern

NET = """Net for the pier
Ch 12, sl st in 2nd ch from hook, * ch 7, sl st in next st, repeat from * 9 times, ch 3, trc in last
loop already worked, ch 1, turn (11 loops). 2nd ROW: * Ch 7, s c in next loop, repeat from * across
row, then ch 3, trc in last loop already worked in, turn. 3rd ROW: Inc row: Ch 7, s c in same loop,
* ch 7, s c in next loop, repeat from * across row to last loop, ch 3, trc in same loop, turn.
Repeat 2nd and 3rd rows until there are 63 loops across.
"""
SHELLS = """Shawl
Ch {chains}.
Row 1: Sc in 2nd ch from hook, *skip 2 sts, 5 dc in next, skip 2, sc in next. Rep from * across.
Turn.
Row 2: Ch 3, 2 dc in same st, *skip 2, sc in next, skip 2, 5 dc in next sc. Rep from *, ending with
3 dc in last sc. Turn.
Row 3: Ch 1, sc in first st, *skip 2, 5 dc in next sc, skip 2, sc in next dc. Rep from * ending with
last sc in top of ch 3. Turn.
Row 4: Ch 5, skip 2 sts, *dc in next st, ch 2, skip 2 sts; rep from * across, dc in last st. Turn.
Row 5: Ch 3, *2 dc in next ch-2 sp, (dc, ch 1, dc) in next dc; rep from * across. Turn.
Row 6: Ch 1, *sc in next 3 dc, (ch 3, sc in next dc) 2 times; rep from * across.
"""
MAT = """Mat
Rnd 1: Ch 3, 23 dc in ring, join.
Rnd 2: Ch 3, dc in same st, dc in each of the next 2 dc, 2 dc in next dc, * ch 2, 2 dc in next dc,
dc in each of the next 2 dc, 2 dc in next dc, repeat from * 4 times, ch 2, join.
Rnd 3: Ch 3, dc in same st, dc in each of the next 4 dc, 2 dc in next dc, * ch 2, 2 dc in next dc,
dc in each of the next 4 dc, 2 dc in next dc, repeat from * all around, ch 2, join.
Rnd 4: Ch 3, dc in next 2 dc, * ch 1, skip 1 dc, dc in next dc, repeat from * around, join.
"""


@pytest.mark.parametrize(
    "text", [NET, MAT, *(SHELLS.format(chains=chains) for chains in (50, 301, 302, 306, 600))]
)
def test_passes_at_once_are_passes_one_by_one(text: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """Counts, moves, problems: nothing tells which way a row was counted."""
    at_once = repr(count_pattern(parse_pattern(text)))
    monkeypatch.setattr(Stride, "passes", lambda *_: 0)
    assert repr(count_pattern(parse_pattern(text))) == at_once


def test_passes_are_taken_at_once(monkeypatch: pytest.MonkeyPatch) -> None:
    """A row of a hundred passes works a few of them."""
    seen: list[int] = []
    passes = Stride.passes

    def counted(self: Stride, *told: object) -> int:
        more = passes(self, *told)  # type: ignore[arg-type]
        seen.append(more)
        return more

    monkeypatch.setattr(Stride, "passes", counted)
    count_pattern(parse_pattern(SHELLS.format(chains=601)))
    assert max(seen) > 80


def test_runs_left_many_times_over() -> None:
    """The same runs laid at once and one time after the other."""
    chance = Random(7)
    for _ in range(2_000):
        kinds = [
            Run(chance.choice(["sc", "dc", "sp", GAP]), chance.randrange(3), 0, False, unit)
            for unit in chance.choices(["", "", "", "shell"], k=chance.randrange(4))
        ]
        begun = [Run(chance.choice(["sc", "sp"]), 2)] * chance.randrange(2)
        times, group = chance.randrange(6), chance.random() < 0.5
        at_once, slowly = (Tally(0, Below(), Choice(), Walk(None), list(begun)) for _ in range(2))
        at_once.make_runs(kinds, times, group)
        for _ in range(times):
            beside = bool(slowly.runs and kinds) and slowly.runs[-1].is_stitch
            if group and slowly.grouped and beside and kinds[0].is_stitch:
                slowly.runs.append(Run(GAP))
            added(slowly.runs, kinds)
            slowly.grouped = group
        assert at_once.runs == slowly.runs


def test_a_row_that_grows_without_end_is_asked_about() -> None:
    """Repeats in repeats over a row ten times too long: not counted, and the maker is told why."""
    counted = count_pattern(parse_pattern(
        "STOLE\n\nWith Fog ch 427, s c in 2nd st from hook, 2 d c in same space, * skip 2 sts of "
        "ch, 1 s c, 2 d c in next st of ch, repeat from * across ch ending last repeat d c in "
        "same space, ch 4, turn. 3rd ROW: D c in 1st d c, * ch 1, d c in next 2 sts in s c "
        "(shell), * shell in next st, repeat ffrom * across row ending with 1 s c "
        "in last s c, ch 1, turn. Repeat the last row 5 times."
    ))  # fmt: skip
    asked = [one for one in counted.problems if "grow too large" in one.message]
    assert [one.verdict for one in asked] == [Verdict.UNCLEAR]
    assert all(row.count is None for part in counted.parts for row in part.rows[-3:])
