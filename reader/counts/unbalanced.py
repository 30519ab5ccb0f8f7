"""Rows of a pattern that keep their number of stitches: which of them is told of where they do not
come out, the one that lost or gained stitches and not the one that misses them; and a colour's list
that does not go into the round like those before it.
"""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from reader.counts.counted import CountedRow, Problem, Verdict
from reader.counts.entries import Entry
from reader.counts.faults import Where, quoted
from reader.counts.lists import knits
from reader.counts.patterned import takes_of
from reader.counts.readings import is_rib
from reader.counts.solved import Solved
from reader.pattern.tree import Act, Work

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

FAR = 9
"""Rows before a misfit that are looked at."""


def rightly_placed(
    ledger: Ledger, entry: Entry, solved: Solved, where: Where, problem: Problem | None
) -> Problem | None:
    """The problem as it is told, of the row that it belongs to; unchanged elsewhere."""
    if problem is None or problem.printed is not None or not knits(entry.nodes):
        return problem
    if problem.verdict is Verdict.DOES_NOT_FIT and not entry.quoted:
        return _of_earlier_row(ledger, solved, where, problem)
    if problem.verdict is Verdict.UNCLEAR and ledger.listed:
        return _of_list(ledger, entry, where) or problem
    return problem


def _of_earlier_row(ledger: Ledger, solved: Solved, where: Where, problem: Problem) -> Problem:
    have = ledger.below.stitches
    if have is None or solved.tally.uneven:
        return problem
    uses = have + solved.short if solved.short else have - solved.left
    row = _changed_last(ledger)
    if row is None or row.before != uses or row.count != have or row.stated is not None:
        return problem
    if row.verdict is not Verdict.NO_TOTAL or _kept(ledger, uses) < 2:
        return problem
    for at, one in enumerate(ledger.entries):
        if one.number == row.number and one.number:
            ledger.entries[at] = replace(one, gain=0)
    said = (
        f"{row.label}: it leaves {have} stitches, but {where.label} uses {uses}, as many as there "
        f"were before: {quoted(row.written)}. {uses} may be meant."
    )
    return replace(problem, message=said, span=row.span, part=ledger.part, label=row.label)


def _changed_last(ledger: Ledger) -> CountedRow | None:
    """The last row shortly before that did not keep the count."""
    near = reversed(ledger.rows[-FAR:])
    return next((one for one in near if one.count != one.before), None)


def _kept(ledger: Ledger, stitches: int) -> int:
    """How many rows before worked so many stitches and left as many."""
    return sum(one.before == one.count == stitches for one in ledger.rows[-3 * FAR :])


def _of_list(ledger: Ledger, entry: Entry, where: Where) -> Problem | None:
    """A list of single stitches that the round does not divide by, where lists before it were
    repeated to its end.
    """
    have, takes = ledger.below.stitches, takes_of(entry.nodes)
    works = [one for one in entry.nodes if not isinstance(one, Act)]
    even = all(isinstance(one, Work) and one.stitch.takes == one.stitch.makes for one in works)
    if have is None or takes < 2 or not even or have <= takes or not have % takes:
        return None
    if is_rib(entry.nodes):
        # A rib may end anywhere in its list.
        return None
    said = (
        f"{where.label}: the stitches do not fit the row below: one repeat uses {takes} stitches, "
        f"and {have} do not divide by {takes}. {quoted(where.words)}."
    )
    return Problem(
        Verdict.DOES_NOT_FIT, said, where.span, where.part, where.label, None, have, ""
    )
