"""Totals told of each side of a square or another piece with corners, "(7 dc on each side)": held
against the round; a question where no number of sides gives it.
"""

from __future__ import annotations

from collections.abc import Sequence

from reader.counts.counted import Problem, Verdict
from reader.counts.entries import Entry
from reader.counts.fabric import SPACE, Run
from reader.counts.faults import Where, quoted
from reader.counts.solved import Solved
from reader.pattern.apart_totals import SIDE

SIDES = (3, 4, 5, 6, 8)
"""Sides of a piece whose corners are not known."""
IN_CORNER = range(4)
"""Stitches of a corner that are of no side, where no space parts its sides."""


def sides_disagree(entry: Entry, size: int, solved: Solved, where: Where) -> Problem | None:
    """The question, None where the total agrees, or none is told of sides."""
    told = next((one.numbers for one in entry.printed if one.kind == SIDE), ())
    if not told or not solved.count:
        return None
    each, count = told[size if size < len(told) else 0], solved.count
    between = _between(solved.tally.runs)
    if between is None:
        agrees = any(count == sides * (each + more) for sides in SIDES for more in IN_CORNER)
    else:
        agrees = count == len(between) * each or set(between) == {each}
    if agrees:
        return None
    said = (
        f"{where.label}: {each} stitches on each side are printed; the words make {count} in all, "
        f"which does not come to that: {quoted(where.words)}. Please check them."
    )
    return Problem(Verdict.UNCLEAR, said, where.span, where.part, where.label, None, count)


def _between(runs: Sequence[Run]) -> list[int] | None:
    """The stitches from each corner space to the next, around; None where there are no corners."""
    corners = [at for at, run in enumerate(runs) if run.name == SPACE and run.corner]
    if len(corners) < min(SIDES):
        return None
    around = [*runs[corners[0] :], *runs[: corners[0]]]
    sides: list[int] = []
    for run in around:
        if run.name == SPACE and run.corner:
            sides += [0] * run.n
        elif run.is_stitch and sides:
            sides[-1] += run.n
    return sides
