"""Two counts kept alive where a printed total and the words disagree: the rows that follow decide,
since only over one of the two they close.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from typing import TYPE_CHECKING

from reader.counts.agreeing import values
from reader.counts.counted import CountedRow, Problem, Verdict
from reader.counts.fabric import Below, of_runs, plain
from reader.counts.lists import knits
from reader.counts.over_and_narrow import more_overs
from reader.counts.solved import Solved
from reader.pattern.tree import Act, Edge, Node, Repeat
from reader.terms.stitches import Craft

if TYPE_CHECKING:
    from reader.counts.entries import Entry
    from reader.counts.ledger import Ledger

FARTHEST = 12
"""Rows over which two counts are kept, plain ones apart; a doubt that lives longer is left as it
is.
"""


@dataclass(slots=True)
class Rival:
    """The other count: what would lie below, what each row since would have left, how many of them
    are not plain, the question asked where the two parted, and the row being worked over it.
    """

    below: Below
    rows: list[tuple[int, int | None]] = field(default_factory=list)
    worked: int = 0
    asked: Problem | None = None
    working: Solved | None = None


def weigh(ledger: Ledger, entry: Entry, stated: int | None, kind: str) -> Solved:
    """The row solved over the count that it closes better over."""
    solved = ledger.solve(entry, stated, kind)
    rival = ledger.rival
    if rival is None:
        return _by_sections(ledger, entry, solved, stated, kind)
    other = ledger.solve(entry, stated, kind, rival.below)
    if rival.asked is not None and rival.asked.span == ledger.span(entry.row.start, entry.row.end):
        # A row of the same range: its total is the one that is asked about.
        stated = None
    ours, theirs = _standing(solved, stated, kind), _standing(other, stated, kind)
    if theirs > ours:
        _take_over(ledger, rival)
        return other
    rival.working = other
    if ours > theirs:
        ledger.rival = None
    return solved


def _by_sections(
    ledger: Ledger, entry: Entry, solved: Solved, stated: int | None, kind: str
) -> Solved:
    """Where the count below is in doubt: a row of as many repeats as those before it tells it."""
    tally = solved.tally
    if ledger.pattern.craft is not Craft.KNITTING:
        return solved
    if ledger.fitted or not ledger.doubted or not tally.uneven or solved.fits is not False:
        if solved.fits and tally.sections > 1:
            ledger.sections = tally.sections
        return solved
    whole = [one for one in entry.nodes if not isinstance(one, Act)]
    if ledger.sections < 2 or len(whole) != 1 or not isinstance(whole[0], Repeat):
        return solved
    below = plain(ledger.sections * tally.uneven[1], ledger.sections)
    other = ledger.solve(entry, stated, kind, below)
    if other.fits is not True or not ledger.rows:
        return solved
    why = f"{below.stitches} stitches are what the next row needs for its {ledger.sections} repeats"
    last = ledger.rows[-1]
    ledger.rows[-1] = replace(last, count=below.stitches, assumed=(*last.assumed, why))
    ledger.below, ledger.doubted = below, False
    return other


def as_often(ledger: Ledger, entry: Entry, solved: Solved) -> int | None:
    """The stitches of a knitted row that does not fit, if it has as many repeats as the rows before
    had; None where that says nothing.
    """
    whole = [one for one in entry.nodes if not isinstance(one, Act)]
    if ledger.sections < 2 or len(whole) != 1 or not isinstance(whole[0], Repeat):
        return None
    if solved.fits is not False or not solved.tally.uneven or not knits(entry.nodes):
        return None
    first = [one for one in solved.tally.moves if one.passes and one.passes[0].number == 1]
    takes, makes = sum(one.takes for one in first), sum(one.makes for one in first)
    # So many repeats would have to lie below, near enough.
    near = abs(ledger.sections * takes - (ledger.below.stitches or 0)) <= 2 * takes
    return ledger.sections * makes if near and first and takes != makes and makes >= 0 else None


def _standing(solved: Solved, stated: int | None, kind: str) -> int:
    agrees = stated is not None and stated in values(solved, kind)
    return 2 * agrees + (solved.fits is True)


def _take_over(ledger: Ledger, rival: Rival) -> None:
    """Goes on with the other count, in the rows since the two parted too."""
    why = "of the two numbers here, only this one lets the next rows close"
    before = ledger.rows[rival.rows[0][0]].before if rival.rows else None
    for index, count in rival.rows:
        row = ledger.rows[index]
        told = (*row.assumed, why)
        ledger.rows[index] = replace(row, before=before, count=count, assumed=told)
        before = count
    ledger.below, ledger.rival, ledger.doubted = rival.below, None, False
    _settle(ledger, rival.asked)
    _tell_entries(ledger, [ledger.rows[index] for index, _ in rival.rows])


def _settle(ledger: Ledger, asked: Problem | None) -> None:
    """A total only asked about is wrong where the next rows close over the words' count."""
    if asked not in ledger.problems or asked is None or asked.verdict is not Verdict.UNCLEAR:
        return
    said = (
        f"{asked.label}: the printed total is {asked.printed}, but the words make {asked.counted}, "
        "and only with these the next rows close."
    )
    at = ledger.problems.index(asked)
    ledger.problems[at] = replace(asked, verdict=Verdict.TOTAL_DISAGREES, message=said)
    ledger.rows[:] = [
        replace(one, verdict=Verdict.TOTAL_DISAGREES)
        if one.span == asked.span and one.verdict is Verdict.UNCLEAR
        else one
        for one in ledger.rows
    ]


def _tell_entries(ledger: Ledger, rows: list[CountedRow]) -> None:
    """Rows called back later gain what they gained by the count that was gone on with."""
    gains = {
        row.number: row.count - row.before
        for row in rows[:1]
        if row.number is not None and row.count is not None and row.before is not None
    }
    ledger.entries[:] = [
        replace(one, gain=gains[one.number], told=True) if one.number in gains else one
        for one in ledger.entries
    ]


def carry(
    ledger: Ledger, problem: Problem | None, before: Below, solved: Solved, nodes: Sequence[Node]
) -> None:
    """After a row is booked: keeps the other count where its total and words disagree, or takes
    the one that is kept a row further.
    """
    rival, row = ledger.rival, ledger.rows[-1]
    if problem is not None and _disagree(problem, before, solved, nodes):
        pair = (problem.printed, problem.counted)
        other = next((one for one in pair if one is not None and one != row.count), None)
        if other is not None and _near(*pair):
            below = of_runs(solved.tally.runs, other, 0) if other == solved.count else plain(other)
            ledger.rival = Rival(below, [(len(ledger.rows) - 1, other)], asked=problem)
        return
    if rival is None and problem is None and solved.fits and row.stated is None:
        more = more_overs(nodes, solved.tally.size)
        if more and row.count is not None:
            other = row.count + more
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
    rival.worked += 1
    if count is None or count == row.count or rival.worked >= FARTHEST:
        ledger.rival = None


def _only_taken(nodes: Sequence[Node]) -> bool:
    """Whether a row only takes stitches on, each lot by its number: it leaves no room."""
    works = [one for one in nodes if not isinstance(one, Act)]
    return bool(works) and all(
        isinstance(one, Edge) and one.cast_on and one.number is not None for one in works
    )


def _disagree(problem: Problem, before: Below, solved: Solved, nodes: Sequence[Node]) -> bool:
    """Whether a printed total and the words disagree; where it is only asked about, the words must
    use all that lies below.
    """
    if problem.printed == problem.counted:
        return False
    if problem.verdict is Verdict.TOTAL_DISAGREES or _only_taken(nodes):
        return True
    crochet = not any(run.name in ("k", "p") for run in solved.tally.runs)
    asked = problem.verdict is Verdict.UNCLEAR and crochet and not solved.tally.unread
    # Of a first row nothing below tells which of the two is right.
    begins = (before.stitches is None or before.chained) and solved.tally.spaces == 0
    begins = begins and solved.fits is not False
    opened = solved.tally.spaces > 0 or before.spaces > 0
    return asked and (begins or (solved.fits is True and opened))


def _near(printed: int | None, counted: int | None) -> bool:
    """Whether two totals are near enough for one slip to lie between them."""
    if printed is None or counted is None:
        return False
    return abs(printed - counted) <= max(4, counted // 8)


def passed_by(ledger: Ledger, even: bool) -> None:
    """A row by rule changes neither count where it is even; else nothing more is told of them."""
    rival = ledger.rival
    if rival is None:
        return
    if not even:
        ledger.rival = None
        return
    rival.rows.append((len(ledger.rows) - 1, rival.below.stitches))
