"""Loops that a total prints where the rows below are in doubt: the round is gone on with as so many
loops, each with its stitch.
"""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from reader.counts.agreeing import SPACES, loops_only, values
from reader.counts.fabric import SPACE, Run, of_runs
from reader.counts.solved import Solved
from reader.counts.tally import Tally

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

WHY = "as many loops as are printed, since the rows below are in doubt"


def take_printed_loops(
    ledger: Ledger, solved: Solved, stated: int | None, kind: str, doubted: bool
) -> None:
    """Goes on with the printed loops; doubted: what lay below the row was in doubt."""
    if stated is None or not SPACES.search(kind) or not (doubted or solved.count is None):
        return
    loop = _one_loop(solved.tally)
    if stated in values(solved, kind) or loop is None or stated > 2_000:
        return
    runs = [run for _ in range(stated) for run in loop]
    stitches = sum(run.n for run in runs if run.is_stitch)
    in_loop = ledger.below.in_loop
    ledger.below = replace(of_runs(runs, stitches, stated), in_loop=in_loop)
    ledger.doubted = False
    last = ledger.rows[-1]
    ledger.rows[-1] = replace(
        last, count=stitches, spaces=stated, groups=stated, of="loops",
        assumed=(*last.assumed, WHY),
    )  # fmt: skip


def _one_loop(tally: Tally) -> tuple[Run, Run] | None:
    """The stitch and the loop that a round of loops is made of; None for other rounds."""
    if not loops_only(tally):
        return None
    held = next((run for run in tally.runs if run.is_stitch), None)
    loop = next((run for run in tally.runs if run.name == SPACE), None)
    return (replace(held, n=1), replace(loop, n=1)) if held and loop else None
