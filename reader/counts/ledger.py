"""Ledger: the rows of one part as they are worked, one after the other, with what each leaves for
the next.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

from reader.counts.agreeing import us_kind
from reader.counts.asides import set_apart
from reader.counts.copies_joined import come_together
from reader.counts.counted import CountedRow, Problem, Verdict
from reader.counts.earlier_rows import earlier_row
from reader.counts.edging import goes_around
from reader.counts.entries import Entries, Entry, by_rule, called, off_the_chain, over_rows, so_many
from reader.counts.fabric import Below, plain, turned
from reader.counts.faults import Where, quoted
from reader.counts.foundation import (
    begins,
    below_ring,
    closed_round,
    ends_at_half,
    ends_in_loop,
    start_inside,
    without_knot,
)  # fmt: skip
from reader.counts.groups_counted import row_groups
from reader.counts.in_turn import in_turn, of_last
from reader.counts.judging import judge, still_doubted
from reader.counts.learned_totals import Learned
from reader.counts.loops_of_stitches import calls_loops, loops_called
from reader.counts.markers import placed
from reader.counts.on_hand import count_of, had, left_aside, left_by, stated_in, told_by_total
from reader.counts.patterned import edge_beside, unit_before
from reader.counts.printed_loops import take_printed_loops
from reader.counts.questions import ask_of_total
from reader.counts.quoted_parts import with_parts
from reader.counts.rivals import Rival, as_often, carry, passed_by, weigh
from reader.counts.seen import assumptions
from reader.counts.short_rows import way_back
from reader.counts.solutions import Solutions, as_one_move, moves_of
from reader.counts.solved import Solved
from reader.counts.starting import start, starts_work
from reader.counts.tally import MOVES
from reader.counts.turning import chain_options, turns_always, turns_at_end, turns_back
from reader.counts.waiting import Lot, brought, keep_waiting, waiting_for
from reader.counts.worked import Move, MoveKind
from reader.counts.written import read_written
from reader.pattern.cursor import span_of
from reader.pattern.figures import tightened
from reader.pattern.labels import Mark
from reader.pattern.layout import WrittenRow
from reader.pattern.parser import Pattern
from reader.pattern.read_once import totals_of
from reader.pattern.rule_words import OF_LENGTH
from reader.pattern.totals import PLAIN_KINDS, STITCHES, Printed
from reader.pattern.tree import Edge
from reader.terms.stitches import Craft
from reader.text.span import Span

if TYPE_CHECKING:
    from reader.counts.pieces import Piece

LONGEST_ROW = 5_000
"""Stitches: longer rows come of a misprint, or a misreading, and are not followed further."""
MOST_MOVES = 60_000
"""Moves of one part that are opened; a part that a person can work has fewer."""


class Ledger:
    """Works rows one after the other and books what each leaves."""

    def __init__(
        self,
        pattern: Pattern,
        size: int,
        part: str,
        room: int,
        earlier: dict[str, list[Entry]] | None = None,
        before: Below | None = None,
        copies: int = 1,
    ) -> None:
        self.pattern, self.size, self.part, self.room = pattern, size, part, room
        self.text, self.coming = pattern.reading, ""
        self.rows: list[CountedRow] = []
        self.problems: list[Problem] = []
        self.below, self.before = Below(), before if before is not None else Below()
        self.carried, self.turning, self.number, self.opened, self.star = 0, 0, 0, 0, -1
        self.copies, self.joined, self.doubted = copies, False, False
        self.hooked = loops_called(self.text)
        self.entries = Entries()
        self.units: dict[str, None] = {}
        self.learned: dict[str, Learned] = {}
        self.earlier = earlier if earlier is not None else {}
        self.is_round = bool(re.search(r"\brnd|\bround|\bring\b", self.text[:4000], re.IGNORECASE))
        self.rival: Rival | None = None
        self.sections, self.markers, self.edge, self.fitted, self.listed = 0, 0, 0, True, False
        self.waiting: tuple[int, ...] = ()
        self.lots: list[Lot] = []
        self.unworked, self.short, self.pace = 0, 0, (0, 1)
        self.spots: list[tuple[int, str]] = []
        self.divisions: dict[int, int] = {}
        self.headed, self.corners = 1, 0
        self.pieces: dict[str, Piece] = {}
        self.solutions = Solutions()
        self.times_more: bool | None = None
        self.held: dict[int, bool] = dict(pattern.chain_counts)

    def full(self) -> bool:
        """Whether no more rows may be opened."""
        return len(self.rows) >= self.room

    def words(self, start: int, end: int) -> str:
        """The pattern's words in a stretch, on one line."""
        return " ".join(self.pattern.source.text[start:end].split()).lstrip(".,;: ").rstrip("= ")

    def in_figures(self, start: int, end: int) -> str:
        """The words as rules are looked for in: on one line, numbers in figures, of this size."""
        words = tightened(self.text[start:end], self.size, len(self.pattern.sizes))
        return " ".join(words.split())

    def span(self, start: int, end: int) -> Span:
        """The span in the maker's text."""
        return span_of(self.pattern.book, start, max(end, start + 1))

    def read(self, row: WrittenRow) -> Entry:
        """The instructions and totals of a written row."""
        return read_written(self.pattern, row, self.entries[-1:], self.size)

    def printed(self, words: str) -> tuple[tuple[Printed, ...], str]:
        """The totals printed in words, and the words without them."""
        return totals_of(words, self.pattern.book)

    def plain(self, row: WrittenRow) -> None:
        """A row of instructions, once for each number of its label."""
        entry = brought(self, with_parts(self, self.read(row)))
        come_together(self, entry)
        if not self.rows and self.below.stitches is None:
            entry = replace(entry, nodes=without_knot(entry.nodes))
        rows = any(isinstance(one, Edge) and one.rows > 1 for one in entry.nodes)
        if starts_work(self, entry) and not rows:
            start(self, entry)
            return
        sizes = len(self.pattern.sizes)
        numbers = so_many(row.mark, self.text[row.start : row.end], self.size, sizes)
        first, behind = start_inside(entry.nodes, self.before)
        if first and self.below.stitches is None and not self.rows:
            start(self, replace(entry, nodes=first, printed=()))
            entry = replace(entry, nodes=behind)
        for one in over_rows(entry):
            for at, number in enumerate(numbers):
                if self.full():
                    return
                self.work(self.within_range(one, at, len(numbers)), number)

    def within_range(self, entry: Entry, at: int, rows: int) -> Entry:
        """One of a label's rows: where each changes the count, the total is the last's, or its own.
        """
        own = in_turn(entry.printed, at, rows, len(self.pattern.sizes)) or entry.printed
        if own is not entry.printed or not own or at + 1 == rows:
            return entry if own is entry.printed else replace(entry, printed=own)
        count = self.solve(entry, None, "").count
        changes = count is not None and count != self.below.stitches
        return replace(entry, printed=()) if changes else entry

    def entry_of(self, number: int, words: str = "") -> Entry | None:
        """The latest row of that number, in this part or in an earlier one."""
        return called(self.entries, self.earlier, number, words)

    def again(self, entry: Entry, number: int | None, written: WrittenRow | None = None) -> None:
        """A row worked again under a new number, with its total over as many as at first."""
        row = WrittenRow(None, written.start, written.end) if written else entry.row
        first = entry.base.stitches if entry.base and self.pattern.craft is Craft.KNITTING else 0
        printed = entry.printed if 0 < (first or 0) == self.below.stitches else ()
        self.work(replace(entry, row=row, printed=printed, quoted=True), number)

    def even(
        self,
        count: int | None,
        mark: Mark | None,
        start: int,
        end: int,
        why: str,
        measured: bool = False,
    ) -> None:
        """A row by rule, that only its count is known of; measured: it stands for as many as a
        measure takes.
        """
        words, span = self.words(start, end), self.span(start, end)
        self.go_on(None)
        self.below = Below() if count is not None and count < 0 else self.below
        count = count if count is not None and count >= 0 else self.below.stitches
        begins = mark is not None and mark.numbers[:1] == (1,)
        number = self.number + 1 if (self.number or begins) and not measured else None
        before = self.below.stitches
        stitch = "k" if self.pattern.craft is Craft.KNITTING else "st"
        move = Move(
            MoveKind.WORK, words, span, before or 0, count or 0, 0, stitch, max(1, count or 1)
        )
        self.rows.append(CountedRow(
            self.name(mark, number), number, self.is_round, words, span, before, count, None,
            Verdict.NO_TOTAL, (move,),
            assumed=(why,) if why else (),
        ))  # fmt: skip
        # How many rows a measure takes nobody knows: those behind it have no number.
        unknown = measured and OF_LENGTH.search(words)
        self.number = 0 if unknown else number or self.number
        row = WrittenRow(mark, start, end)
        if not measured:
            craft = self.pattern.craft
            self.entries.append(by_rule(row, words, span, number, before, count, craft))
        passed_by(self, count == before)
        if count != before:
            self.below = plain(count, self.below.sections)

    def settle(self, stitches: int) -> None:
        """Takes a number of stitches that the words give for granted, whatever was counted up to
        here.
        """
        if self.below.stitches != stitches and self.rows:
            why = (
                f"{stitches} stitches are taken from the words, though the rows come out otherwise"
            )
            last = self.rows[-1]
            self.rows[-1] = replace(last, count=stitches, assumed=(*last.assumed, why))
            if self.below.stitches is not None and not self.doubted:
                said = (
                    f"{last.label}: the words run to {stitches} stitches, but the rows come to "
                    f"{self.below.stitches}: {quoted(last.written)}. Please count."
                )
                self.problems.append(Problem(
                    Verdict.UNCLEAR, said, last.span, self.part, last.label, stitches,
                    self.below.stitches,
                ))  # fmt: skip
            self.below, self.doubted = plain(stitches), True

    def check_total(self, row: WrittenRow, start: int, end: int, settled: bool = True) -> None:
        """Compares the total printed behind a rule with its rows; settled: it is gone on with."""
        words = self.text[row.start + start : row.start + end]
        printed = of_last(self.printed(words)[0], len(self.pattern.sizes))
        entry = Entry(None, (), row, tuple(one for one in printed if not one.change))
        stated, kind = self.stated(entry)
        here = self.below.stitches
        if stated is None or stated == here or not self.rows or kind not in STITCHES + PLAIN_KINDS:
            return
        if here is not None and not self.doubted:
            ask_of_total(self, stated, row.start + start, row.start + end)
        if settled:
            self.settle(stated)

    def name(self, mark: Mark | None, number: int | None) -> str:
        """ "Round 5", "Next row"."""
        if number is not None:
            is_round = mark.is_round if mark and mark.is_round is not None else self.is_round
            return f"{'Round' if is_round else 'Row'} {number}"
        if mark is not None and mark.name:
            return mark.name[:1].upper() + mark.name[1:]
        return "Next round" if self.is_round else "Next row"

    def go_on(self, entry: Entry | None) -> None:
        """A part that starts nothing goes on with what the part before it left."""
        nothing = self.below.stitches is None and not self.below.runs and not self.rows
        if nothing and self.before.stitches != 0 and (entry is None or not begins(entry.nodes)):
            self.below, self.waiting = self.before, self.waiting or self.before.set_aside

    def solve(
        self, entry: Entry, stated: int | None, kind: str, over: Below | None = None
    ) -> Solved:
        """The best reading of a row over what lies below, or over something else."""
        pattern = self.pattern
        self.go_on(entry)
        over = over if over is not None else earlier_row(self, entry)
        below = over if over is not None else below_ring(entry.nodes, self.below)
        # The work was turned at the end of the row before, and is turned back at once.
        below = turned(below) if turns_back(entry.nodes) else below
        edge = edge_beside(entry.nodes, below.stitches, unit_before(self.text, entry.row.start))
        self.edge = self.edge if edge is None else edge
        waiting = waiting_for(self.waiting, entry.nodes)
        if self.markers or self.edge or waiting:
            below = replace(below, markers=self.markers, edge=self.edge, waiting=waiting)
        self.hooked = self.hooked or calls_loops(entry.nodes, below)
        below = replace(below, hooked=True) if self.hooked else below
        if below.flat and not goes_around(entry.row.mark, self.rows):
            below = replace(below, flat=False)
        options = chain_options(
            entry.nodes, below, self.carried, self.size, pattern.craft, self.held,
            pattern.silent_counts, pattern.chain_counts if stated is None else {},
            "" if entry.quoted else self.coming,
        )  # fmt: skip
        # Past what a whole piece can hold, a row's moves are told as one: none is opened.
        room = MOVES if self.opened <= MOST_MOVES else 0
        total = (stated, kind)
        return self.solutions.best(entry, below, options, self.size, self.carried, total, room)

    def work(self, entry: Entry, number: int | None) -> None:
        """Works one row and books it."""
        entry = way_back(self, off_the_chain(entry, self.below))
        stated, kind = self.stated(entry)
        # Rows whose numbers are left out were worked between: what lies below is not this row's.
        self.doubted = self.doubted or 0 < self.number < (number or 0) - 1
        solved, doubted = weigh(self, entry, stated, kind), self.doubted
        self.listed = self.listed or solved.choice.over_again
        row, mark = entry.row, entry.row.mark
        label, words = self.name(mark, number), self.words(row.start, row.end)
        where = Where(self.part, label, self.span(row.start, row.end), words)
        aside, question = set_apart(entry, solved, where, self.below.stitches, stated)
        problem = judge(self, entry, solved, where, aside) or question
        self.fitted = self.fitted if aside else solved.fits is True
        self.doubted = still_doubted(self, entry, solved, stated, problem is not None)
        if problem is not None:
            self.problems.append(problem)
        count = count_of(entry, solved, stated, kind, problem, self.below.stitches)
        if stated is not None and solved.chained and stated == solved.count:
            self.held.setdefault(self.carried or 3, True)
        if stated is None:
            often = as_often(self, entry, solved)
            count = self.below.stitches if aside else count if often is None else often
        verdict = Verdict.FITS if stated is not None else Verdict.NO_TOTAL
        tally = solved.tally
        is_round = self.is_round if mark is None or mark.is_round is None else mark.is_round
        groups, unit = row_groups(solved, kind, stated, entry, self)
        self.rows.append(CountedRow(
            label, number, is_round, words, where.span, self.below.stitches, count, stated,
            problem.verdict if problem else verdict, self.moves_of(solved, entry, where),
            unit or self.printed_total(entry)[1], tally.spaces, mark.side if mark else "", "",
            tally.walk.takes, groups, assumptions(solved, entry.nodes),
        ))  # fmt: skip
        entry = replace(entry, unit=unit) if unit != entry.unit else entry
        kept, self.short = self.below, left_aside(solved, entry.nodes)
        self.unworked = max(self.unworked, self.short)
        self.book(solved, count, entry, number, is_round)
        if aside and stated is None:
            self.below = kept
        carry(self, problem, kept, solved, entry.nodes)
        take_printed_loops(self, solved, stated, kind, doubted)

    def moves_of(self, solved: Solved, entry: Entry, where: Where) -> tuple[Move, ...]:
        """The row's moves; past what a whole piece can hold, one move stands for a row."""
        tally = solved.tally
        if tally.overgrown:
            return (Move(MoveKind.UNREAD, where.words, where.span),)
        self.opened += len(tally.moves)
        if self.opened <= MOST_MOVES or len(tally.moves) < 2:
            return moves_of(solved, entry)
        return (as_one_move(tally, where.words, where.span),)

    def book(
        self, solved: Solved, count: int | None, entry: Entry, number: int | None, is_round: bool
    ) -> None:
        """What the row leaves for the next."""
        tally, base = solved.tally, self.below
        sections = tally.sections * (tally.sections > 1)
        self.below = left_by(solved, count, entry, sections)
        turns = turns_at_end(entry.nodes)
        # Rounds are called rows too, in patterns that join them.
        self.joined = not turns and (self.joined or closed_round(entry.nodes))
        if turns or not (is_round or self.joined):
            self.below = turned(self.below, tally.turning, ends_at_half(entry.nodes))
        elif ends_in_loop(entry.nodes):
            self.below = replace(self.below, in_loop=True)
        if (self.below.stitches or 0) > LONGEST_ROW:
            self.below, self.doubted = Below(), True
        self.turning = solved.next_chain if turns_always(entry.nodes) else self.turning
        self.carried = solved.next_chain or self.turning
        self.number = number if number is not None else (self.number + 1 if self.number else 0)
        first = entry.row.mark is None and not self.entries
        if number is None and not self.number and first and self.pattern.craft is Craft.CROCHET:
            self.number = 1
            self.rows[-1] = replace(self.rows[-1], label=self.name(None, 1), number=1)
        before = had(self.rows)
        verdict, craft = self.rows[-1].verdict, self.pattern.craft
        told = told_by_total(solved, count, verdict, craft, entry.printed)
        fitted = count is not None and before is not None and (solved.fits is True or told)
        gain = count - before if fitted and count is not None and before is not None else entry.gain
        known = number if number is not None else self.number or None
        keep_waiting(self, entry.nodes, before, count)
        self.markers = placed(entry.nodes, sections) or self.markers
        if entry.unit:
            # The latest last.
            self.units.pop(entry.unit, None)
            self.units[entry.unit] = None
        self.entries.append(
            replace(
                entry, number=known, gain=gain, quoted=False, told=told or entry.told, base=base,
                sections=sections, passed=entry.passed if entry.quoted else tally.walk.passed,
            )
        )

    def stated(self, entry: Entry) -> tuple[int | None, str]:
        """The printed total of the row for this size, and what it counts, a stitch by its US name.
        """
        stated, kind = self.printed_total(entry)
        return stated, us_kind(kind, self.pattern.terms)

    def printed_total(self, entry: Entry) -> tuple[int | None, str]:
        """The printed total of the row for this size, and what it counts in the text's own word."""
        sizes, below = len(self.pattern.sizes), self.below.stitches
        return stated_in(entry.printed, self.size, sizes, below, entry.row.sizes)
