"""Questions about rules over rows: what only the work itself, or a chart, can tell."""

from __future__ import annotations

from typing import TYPE_CHECKING

from reader.counts.counted import Problem, Verdict
from reader.counts.faults import quoted
from reader.pattern.layout import WrittenRow

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger


def ask_how_often(ledger: Ledger, row: WrittenRow, start: int, end: int) -> None:
    """A question: only the work itself tells how often a change is made."""
    label, words = ledger.name(row.mark, None), quoted(ledger.words(start, end))
    said = (
        f"{label}: how often this is worked is not told in rows or stitches, so how many stitches "
        f"are left is not known: {words}. Please count them then."
    )
    span = ledger.span(start, end)
    ledger.problems.append(Problem(Verdict.UNCLEAR, said, span, ledger.part, label))


def ask_of_label(ledger: Ledger, row: WrittenRow, many: int, told: int, start: int) -> None:
    """A question: a label stands for another number of rows than the words behind it."""
    label = ledger.name(row.mark, row.mark.numbers[0] if row.mark and row.mark.numbers else None)
    said = (
        f"{label}: this stands for {many} rows, but the words come to {told}: "
        f"{quoted(ledger.words(start, row.end))}. As many as the label says are counted."
    )
    span = ledger.span(row.start, row.end)
    ledger.problems.append(Problem(Verdict.UNCLEAR, said, span, ledger.part, label))


def ask_of_total(ledger: Ledger, stated: int, start: int, end: int) -> None:
    """A question where a total behind rows is not what they come to."""
    label, here = ledger.rows[-1].label, ledger.below.stitches
    said = (
        f"{label}: after these rows {stated} stitches are printed, but they come to {here}: "
        f"{quoted(ledger.words(start, end))}. Please count."
    )
    ledger.problems.append(Problem(
        Verdict.UNCLEAR, said, ledger.span(start, end), ledger.part, label, stated, here
    ))  # fmt: skip


def ask_of_which_row(ledger: Ledger, row: WrittenRow, start: int, end: int) -> None:
    """A question: a change is told of several rows, and not whether each of them has it."""
    label, words = ledger.name(row.mark, None), quoted(ledger.words(start, end))
    said = (
        f"{label}: it is not told whether every one of these rows changes the stitches, so how "
        f"many there are then is not known: {words}. Please count them then."
    )
    span = ledger.span(start, end)
    ledger.problems.append(Problem(Verdict.UNCLEAR, said, span, ledger.part, label))


def ask_of_chart(ledger: Ledger, row: WrittenRow, start: int, end: int) -> None:
    """A question: a chart is not read, so whether its repeat fits is the maker's to check."""
    have = ledger.below.stitches
    label = ledger.name(row.mark, ledger.number + 1 if ledger.number else None)
    stitches = f"the {have} stitches" if have is not None else "the stitches"
    said = (
        f"{label}: a chart cannot be read here; please check that its repeat fits {stitches}: "
        f"{quoted(ledger.words(start, end))}."
    )
    span = ledger.span(start, end)
    ledger.problems.append(Problem(Verdict.UNCLEAR, said, span, ledger.part, label))


def ask_of_same_time(ledger: Ledger, start: int, end: int) -> None:
    """A question: two changes go on together, so that only what both leave is counted."""
    label = ledger.rows[-1].label if ledger.rows else ledger.name(None, None)
    said = (
        f"{label}: this goes on at the same time as what is told before it; the two are counted "
        f"one after the other, so only the count after both is right: "
        f"{quoted(ledger.words(start, end))}."
    )
    span = ledger.span(start, end)
    ledger.problems.append(Problem(Verdict.UNCLEAR, said, span, ledger.part, label))


def ask_of_number(ledger: Ledger, start: int, end: int, shown: int) -> None:
    """Asks about a number of rows that no piece has, of which only the first are counted."""
    label = ledger.rows[-1].label if ledger.rows else "the start"
    said = (
        f"After {label}: the words ask for more rows than any piece has; the first {shown} are "
        f"counted. Please check the number: {quoted(ledger.words(start, end))}."
    )
    where = ledger.span(start, end)
    ledger.problems.append(Problem(Verdict.UNCLEAR, said, where, ledger.part, label))


def ask_of_piece(ledger: Ledger, start: int, end: int) -> None:
    """A question: the rows are told by another piece, and which they are is not understood."""
    label = ledger.name(None, None)
    said = (
        f"{label}: these rows are told by another piece, and which of its rows are meant could not "
        f"be read: {quoted(ledger.words(start, end))}. Please count them then."
    )
    span = ledger.span(start, end)
    ledger.problems.append(Problem(Verdict.UNCLEAR, said, span, ledger.part, label))


def ask_of_goal(ledger: Ledger, here: int, step: int, goal: int, start: int, end: int) -> None:
    """A question: equal steps do not lead to the number that the words end with."""
    label = ledger.rows[-1].label if ledger.rows else ledger.name(None, None)
    said = (
        f"{label}: from {here} stitches, {abs(step)} at a time, {goal} are never reached: "
        f"{quoted(ledger.words(start, end))}. Please check the numbers."
    )
    ledger.problems.append(Problem(
        Verdict.UNCLEAR, said, ledger.span(start, end), ledger.part, label, goal, None
    ))  # fmt: skip
