"""A worked row and what its ledger knows -> what is wrong with it: a fault, a question, or nothing.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from reader.counts.always import held_to_it
from reader.counts.by_side import sides_disagree
from reader.counts.chain_left_out import chain_left_out
from reader.counts.counted import Problem, Verdict
from reader.counts.entries import Entry, in_running_text, requoted
from reader.counts.faults import Where, fault_of, other_sense, star_put_back
from reader.counts.learned_totals import learn
from reader.counts.left_unworked import left_otherwise
from reader.counts.lists import knits
from reader.counts.plainly import told_throughout
from reader.counts.solved import Solved
from reader.counts.spaces_named import not_there
from reader.counts.too_often import ask_of_growth, ask_of_times, most_often
from reader.counts.unbalanced import rightly_placed
from reader.pattern.tree import Act, Repeat, Until

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger


def judge(
    ledger: Ledger, entry: Entry, solved: Solved, where: Where, aside: bool
) -> Problem | None:
    """What is wrong with a row as it was worked; aside: its words work nothing."""
    stated, kind = ledger.stated(entry)
    problem = fault_of(solved, stated, kind, ledger.below, where, entry.nodes, ledger.doubted)
    if aside and not solved.tally.unread:
        problem = None
    times = most_often(entry.nodes, ledger.size) if solved.tally.unread else 0
    problem = ask_of_times(times, where, stated) if times else problem
    problem = ask_of_growth(where, stated) if solved.tally.overgrown else problem
    if problem is not None and problem.verdict is Verdict.DOES_NOT_FIT and entry.quoted:
        problem = requoted(problem, ledger.below.stitches, entry.gain)
    if problem is not None and entry.row.mark is None and stated is None:
        problem = in_running_text(problem)
    problem = held_to_it(ledger, entry, solved, where, problem) if stated is None else problem
    if problem is None and not ledger.doubted and not entry.quoted:
        problem = not_there(entry.nodes, ledger.below, where)
    if problem is None and not ledger.doubted:
        problem = left_otherwise(solved, ledger.below, where, entry.nodes)
    problem = rightly_placed(ledger, entry, solved, where, problem)
    problem = problem or learn(ledger.learned, solved, kind, stated, where)
    problem = problem or sides_disagree(entry, ledger.size, solved, where)
    problem = problem or chain_left_out(ledger, entry, solved, where, stated)
    problem = problem or star_put_back(entry.nodes, where)
    return problem or other_times(ledger, entry, solved, where)


def other_times(
    ledger: Ledger, entry: Entry, solved: Solved, where: Where
) -> Problem | None:
    """A question where "repeat 5 times" closes only in another sense than in the rows before:
    5 in all there, 5 more here.
    """
    repeats = [one for one in entry.nodes if isinstance(one, Repeat)]
    if not any(one.until is Until.AGAIN for one in repeats) or solved.fits is not True:
        return None
    more, before = solved.choice.again_more, ledger.times_more
    ledger.times_more = more if before is None else before
    return other_sense(where, more) if before is not None and before != more else None


def still_doubted(
    ledger: Ledger, entry: Entry, solved: Solved, stated: int | None, wrong: bool
) -> bool:
    """Whether the stitches on hand after a row are in doubt; a printed total that agrees ends it,
    and so does a row that fits and tells every stitch by its number, or has as many repeats of
    several stitches as one before it.
    """
    if not wrong and (stated is not None or _closes(ledger, entry, solved)):
        return False
    tally = solved.tally
    unsure = tally.unread or tally.unsure or tally.branched or bool(tally.spaces)
    unsure = unsure or solved.count is None
    return ledger.doubted or unsure or solved.fits is False


def _closes(ledger: Ledger, entry: Entry, solved: Solved) -> bool:
    """Whether a row uses all that lies below, and would use nothing else."""
    return solved.fits is True and (
        told_throughout(entry.nodes) or _as_often_as_before(ledger, entry, solved)
    )


LEAST = 4
"""Stitches of a repeat, and repeats of a row, that close by chance only seldom."""


def _as_often_as_before(ledger: Ledger, entry: Entry, solved: Solved) -> bool:
    """Whether a knitted row is one repeat that changes the count, worked as often as that of a row
    shortly before.
    """
    tally = solved.tally
    works = [one for one in entry.nodes if not isinstance(one, Act)]
    whole = len(works) == 1 and isinstance(works[0], Repeat) and tally.uneven is None
    times = tally.sections
    if not whole or times < LEAST or tally.walk.takes < LEAST * times or entry.quoted:
        return False
    changes = tally.makes != tally.walk.takes and knits(entry.nodes)
    return changes and any(one.sections == times and one.gain for one in ledger.entries[-3:])
