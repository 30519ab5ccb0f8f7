"""Steps of a plan are shown with place, pass, words, count and what comes."""

from __future__ import annotations

from reader.counts.counted import CountedPart, CountedPattern
from reader.plan.step import Plan
from reader.plan.unroll import make_plan
from reader.screens.layout import lay_out
from reader.wording.show import lines
from reader.wording.show_step import shown_step
from tests.plan.made import move, repeated, round_of


def buoy() -> Plan:
    """An invented buoy, made twice: one round of three passes."""
    moves = repeated(3, move("sc in next 8 sts", 8, 8, times=8), move("sc2tog", 2, 1, "sc2tog"))
    part = CountedPart(
        "Buoy", 2, (round_of(4, 30, 27, moves, "*sc in next 8 sts, sc2tog; rep from * around"),)
    )
    counted = CountedPattern("Harbour buoy", "crochet", "US", "", (), 0, (part,), ())
    return make_plan(counted, "Rnd 4")


def test_each_step_is_shown_with_its_place_and_count() -> None:
    """The steps of the round in order, as plain lines: the figures are those of the plan."""
    plan = buoy()
    part = next(p for p in plan.parts if p.copy == 2)
    row = part.rows[-1]
    shown = [shown_step(plan.title, part, row, step) for step in row.groups]
    # Each pass makes eight stitches and one of two worked together: nine.
    assert [s.count for s in shown] == [
        "0 of 27 done, 27 left",
        "9 of 27 done, 18 left",
        "18 of 27 done, 9 left",
    ]
    assert shown[1].place == "Buoy 2 of 2, Round 4, pass 2 of 3"
    assert "8" in shown[0].step
    assert "eight" not in shown[0].step.lower()


def test_every_step_of_a_plan_fits_every_screen() -> None:
    """No step of the plan is lost on a small or a large terminal."""
    plan = buoy()
    for part in plan.parts:
        for row in part.rows:
            for step in row.groups:
                shown = shown_step(plan.title, part, row, step)
                assert lines(shown)
                assert len(lay_out(shown, 20, 6).rows) == 6
                assert len(lay_out(shown, 120, 40).rows) == 40
