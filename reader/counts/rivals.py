"""Two counts kept alive where a printed total and the words disagree: the rows that follow decide,
since only over one of the two they close.
"""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from typing import TYPE_CHECKING

from reader.counts.counted import Problem, Verdict
from reader.counts.fabric import Below, of_runs, plain
from reader.counts.solve import Solved, values

if TYPE_CHECKING:
    from reader.counts.entries import Entry
    from reader.counts.ledger import Ledger

FARTHEST = 12
"""Rows over which two counts are kept; a doubt that lives longer is left as it is."""
DISAGREE = (Verdict.TOTAL_DISAGREES,)


@dataclass(slots=True)
class Rival:
    """The other count: what would lie below, what each row since would have left, and the row that
    is being worked over it.
    """

    below: Below
    rows: list[tuple[int, int | None]] = field(default_factory=list)
    working: Solved | None = None


def weigh(ledger: Ledger, entry: Entry, stated: int | None, kind: str) -> Solved:
    """The row solved over the count that it closes better over."""
    solved = ledger.solve(entry, stated, kind)
    rival = ledger.rival
    if rival is None:
        return solved
    other = ledger.solve(entry, stated, kind, rival.below)
    ours, theirs = _standing(solved, stated, kind), _standing(other, stated, kind)
    if theirs > ours:
        _take_over(ledger, rival)
        return other
    rival.working = other
    if ours > theirs:
        ledger.rival = None
    return solved


def _standing(solved: Solved, stated: int | None, kind: str) -> int:
    agrees = stated is not None and stated in values(solved, kind)
    return 2 * agrees + (solved.fits is True)


def _take_over(ledger: Ledger, rival: Rival) -> None:
    """Goes on with the other count, in the rows since the two parted too."""
    why = "of the two numbers here, only this one lets the next rows close"
    for index, count in rival.rows:
        row = ledger.rows[index]
        ledger.rows[index] = replace(row, count=count, assumed=(*row.assumed, why))
    ledger.below, ledger.rival, ledger.doubted = rival.below, None, False


def carry(ledger: Ledger, problem: Problem | None, before: Below) -> None:
    """After a row is booked: keeps the other count where its total and words disagree, or takes
    the one that is kept a row further.
    """
    rival, row = ledger.rival, ledger.rows[-1]
    if problem is not None and problem.verdict in DISAGREE and problem.printed != problem.counted:
        pair = (problem.printed, problem.counted)
        other = next((one for one in pair if one is not None and one != row.count), None)
        if other is not None and _near(*pair):
            ledger.rival = Rival(plain(other), [(len(ledger.rows) - 1, other)])
        return
    if rival is None or rival.working is None:
        return
    other_row, rival.working = rival.working, None
    if ledger.below is before:
        count = rival.below.stitches
    else:
        count = other_row.count
        rival.below = of_runs(other_row.tally.runs, count, 0)
    rival.rows.append((len(ledger.rows) - 1, count))
    if count is None or count == row.count or len(rival.rows) > FARTHEST:
        ledger.rival = None


def _near(printed: int | None, counted: int | None) -> bool:
    """Whether two totals are near enough for one slip to lie between them."""
    if printed is None or counted is None:
        return False
    return abs(printed - counted) <= max(4, counted // 10)


def passed_by(ledger: Ledger, even: bool) -> None:
    """A row by rule changes neither count where it is even; else nothing more is told of them."""
    rival = ledger.rival
    if rival is None:
        return
    if not even or len(rival.rows) > FARTHEST:
        ledger.rival = None
        return
    rival.rows.append((len(ledger.rows) - 1, rival.below.stitches))
