"""The stitches on hand after a row: what was counted, or the printed total where the words fail."""

from __future__ import annotations

import re
from collections.abc import Sequence

from reader.counts.agreeing import chains_counted
from reader.counts.counted import CountedRow, Problem, Verdict
from reader.counts.entries import Entry, follows
from reader.counts.fabric import Below, chains_as_stitches, of_runs, stretched
from reader.counts.faults import mostly_untold
from reader.counts.lost_items import lost_words
from reader.counts.solved import Solved
from reader.pattern.totals import PLAIN_KINDS, STITCHES, Printed
from reader.pattern.tree import Act, Deed, Node, ShortTurn, Work
from reader.terms.stitches import Craft


def count_of(
    entry: Entry,
    solved: Solved,
    stated: int | None,
    kind: str,
    problem: Problem | None,
    below: int | None,
) -> int | None:
    """The stitches on hand after a row, None where nothing tells; below: those before it."""
    count = solved.count
    told = by_its_gain(entry, solved) and entry.gain is not None
    told = told or (problem is None and follows(entry, solved.tally.walk.passed))
    if told and stated is None and below is not None:
        return _possible(below + (entry.gain or 0))
    if stated is None and count is not None and _forgets_some(entry, solved):
        return count + solved.left
    if problem is not None:
        asked = problem.verdict is Verdict.UNCLEAR and stated is None
        untold = mostly_untold(solved) and lost_words(entry.nodes) and not solved.tally.spaces
        if asked and untold:
            # What is not read works the row: nothing tells how many there are.
            return None
        return _possible(_in_doubt(problem, count, stated, kind))
    if count is None or (solved.tally.unread and stated is not None):
        return stated if kind in STITCHES or (count is None and kind in PLAIN_KINDS) else count
    return stated if counts_chains(solved, stated, kind) else count


GROUPS = re.compile(
    r"\b(?:shell|fan|cluster|group|v[- ]?st|petal|scallop|popcorn|bobble|repeat)", re.IGNORECASE
)
"""Kinds of which a total counts no stitches."""
FORGOTTEN = 2
"""Stitches at most of which a knitted row forgets to tell: they are on the needle all the same."""
BESIDE = 24
"""For each of them so many told: in a narrow row the number below is as likely wrong."""


def _forgets_some(entry: Entry, solved: Solved) -> bool:
    """Whether the words of a knitted row, all of them read, leave a stitch or two untold."""
    knits = any(isinstance(one, Work) and one.stitch.craft is Craft.KNITTING for one in entry.nodes)
    told = not (solved.short or solved.tally.unread or solved.tally.uneven)
    few = 0 < solved.left <= FORGOTTEN and solved.tally.walk.takes >= BESIDE * solved.left
    return knits and told and solved.fits is False and few


def by_its_gain(entry: Entry, solved: Solved) -> bool:
    """Whether a row called back is counted as gaining what it gained: a printed total told that, or
    it is knitted and its numbers do not fit what is on hand here.
    """
    knits = any(isinstance(one, Work) and one.stitch.craft is Craft.KNITTING for one in entry.nodes)
    misfit = knits and entry.gain is not None and solved.fits is False
    return entry.quoted and (entry.told or misfit)


def had(rows: Sequence[CountedRow]) -> int | None:
    """What the last of the rows began with: the loops of the one before, where it had little else.
    """
    if len(rows) > 1 and rows[-2].spaces == rows[-2].count:
        return rows[-2].count
    return rows[-1].before


def left_by(solved: Solved, count: int | None, entry: Entry, sections: int) -> Below:
    """The row as it lies for the next one, with so many stitches on hand."""
    tally = solved.tally
    if count is not None and follows(entry, tally.walk.passed):
        return of_runs(stretched(tally.runs, count), count, sections)
    if count is not None and by_its_gain(entry, solved) and count != solved.count:
        # The row grew as it did before, whatever its numbers make here.
        return of_runs(stretched(tally.below.runs, count), count, sections)
    if chains_counted(solved, count):
        return chains_as_stitches(of_runs(tally.runs, solved.count, sections))
    of_loops = tally.makes < 2 and count == tally.spaces
    return of_runs(tally.runs, tally.makes if of_loops else count, sections)


def left_aside(solved: Solved, nodes: Sequence[Node]) -> int:
    """The stitches left below at the end of a row that is turned before it is over; 0 for others.
    Those that slip stitches went over at its beginning are not among them.
    """
    tally, below = solved.tally, solved.tally.below.stitches
    turned = any(
        isinstance(one, ShortTurn) or (isinstance(one, Act) and one.deed is Deed.TURN)
        for one in nodes
    )
    if not turned or below is None or not tally.walk.known or tally.unsure or tally.unread:
        return 0
    return max(0, below - tally.walk.takes)


def _possible(count: int | None) -> int | None:
    """The count; None where more is taken away than there is, since then nothing tells."""
    return count if count is None or count >= 0 else None


def _in_doubt(problem: Problem, count: int | None, stated: int | None, kind: str) -> int | None:
    if problem.verdict is Verdict.DOES_NOT_FIT:
        grouped = GROUPS.search(kind) is not None
        return stated if stated is not None and not grouped else problem.counted
    if problem.verdict is Verdict.UNCLEAR and stated is None:
        return problem.counted if problem.counted is not None else count
    if problem.verdict is Verdict.UNCLEAR and problem.printed:
        return stated if kind in STITCHES + PLAIN_KINDS else count
    return count


def counts_chains(solved: Solved, stated: int | None, kind: str) -> bool:
    """Whether the printed total counts the chains of the row's spaces as stitches."""
    if stated is None or stated == solved.count or kind not in STITCHES:
        return False
    return chains_counted(solved, stated)


def told_by_total(
    solved: Solved, count: int | None, verdict: Verdict, craft: Craft, printed: Sequence[Printed]
) -> bool:
    """Whether the printed total, and not the words of a row, tells what it gains: they do not fit
    the row below, could, in crochet, not all be read, or the gain itself is printed.
    """
    gain = any(one.change for one in printed)
    unread = verdict is Verdict.UNCLEAR and (craft is Craft.CROCHET or gain)
    doubtful = solved.fits is not True or unread
    return solved.tally.walk.known and count != solved.count and doubtful


def stated_in(
    printed: Sequence[Printed], size: int, sizes: int, below: int | None,
    worked: frozenset[int] | None = None,
) -> tuple[int | None, str]:
    """The printed total of a row for one size, and what it counts; a change is added to the
    stitches below. worked: the sizes that work the row, None for all; a list may hold only theirs.
    (None, "") where nothing is printed of the whole row, or a list tells not which size it means.
    """
    changes = [one for one in printed if one.change]
    if len(changes) > 1 and len(changes) == len(printed) and below:
        # "(1 inc) ... (2 inc)": each tells of its own spot.
        return below + sum(one.change * one.numbers[0] for one in changes), ""
    for one in reversed(printed):
        at = _place_of(size, sizes, len(one.numbers), worked)
        if at is None:
            continue
        number = one.numbers[at]
        if one.change:
            if below is not None and below + one.change * number >= 0:
                return below + one.change * number, ""
        elif not one.each:
            return number, one.kind
    return None, ""


def _place_of(size: int, sizes: int, numbers: int, worked: frozenset[int] | None) -> int | None:
    """Where in a list of so many numbers that of a size stands; None where nothing tells."""
    if numbers == sizes:
        return size
    if worked is not None and numbers == len(worked) and size in worked:
        return sorted(worked).index(size)
    return 0 if numbers == 1 or sizes == 1 else None
