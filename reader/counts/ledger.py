"""Ledger: the rows of one part as they are worked, one after the other, with what each leaves for the next."""

from __future__ import annotations

import re
from dataclasses import dataclass, replace

from reader.counts.counted import CountedRow, Problem, Verdict
from reader.counts.faults import fault_of
from reader.counts.seen import Shifted, assumptions, first_work
from reader.counts.solve import Solved, best, chain_node, split_ends
from reader.counts.tally import Below
from reader.counts.worked import Move, MoveKind
from reader.pattern.cursor import span_of
from reader.pattern.instructions import read_row
from reader.pattern.labels import Mark
from reader.pattern.layout import ACTION, WrittenRow
from reader.pattern.parser import Pattern
from reader.pattern.printed import printed_in
from reader.pattern.rules import Rule, find_rule
from reader.pattern.totals import Printed
from reader.pattern.tree import Act, Chain, Edge, Node, Start, Work
from reader.terms.stitches import Craft

RULE_ROWS = 400
"""Rows that one rule may open."""


@dataclass(frozen=True, slots=True)
class Entry:
    """A worked row to be called back: its number, instructions and words."""

    number: int | None
    nodes: tuple[Node, ...]
    row: WrittenRow
    printed: tuple[Printed, ...]


class Ledger:
    """Works rows one after the other."""

    def __init__(self, pattern: Pattern, size: int, part: str, room: int) -> None:
        self.pattern, self.size, self.part, self.room = pattern, size, part, room
        self.text = pattern.source.text
        self.rows: list[CountedRow] = []
        self.problems: list[Problem] = []
        self.below = Below()
        self.carried = 0
        self.number = 0
        self.entries: list[Entry] = []
        self.evens: tuple[int, Entry] | None = None
        self.is_round = bool(re.search(r"\brnd|\bround|\bring\b", self.text[:4000], re.IGNORECASE))
        self.doubted = False
        self.held: dict[int, bool] = dict(pattern.chain_counts)

    def add(self, row: WrittenRow, upto: int | None) -> None:
        """Works a written row: its own words, then the rule it ends with, then what follows the rule."""
        words = self.text[row.start : row.end]
        rule = find_rule(words, row.mark is not None)
        self.fill_evens(row.mark)
        if rule is None:
            self.plain(row, row.start, row.end)
        elif rule.kind == "same":
            self.same(row, rule)
        else:
            self.ruled(row, rule, upto)

    def fill_evens(self, mark: Mark | None) -> None:
        """Rows of "row 2 and all even rows" that stand between two labels."""
        if mark is None or not mark.numbers or self.evens is None:
            return
        while (
            self.number + 1 < mark.numbers[0]
            and (self.number + 1) % 2 == self.evens[0]
            and self.room > len(self.rows)
        ):
            self.again(self.evens[1], self.number + 1)

    def plain(self, row: WrittenRow, start: int, end: int) -> None:
        """A row of instructions, once for each number of its label."""
        printed, blank = printed_in(self.text[start:end], len(self.pattern.sizes))
        nodes = read_row(blank, 0, len(blank), self._shifted(start))
        mark = row.mark
        numbers: tuple[int | None, ...] = (
            mark.numbers
            if mark and mark.numbers
            else (None,) * max(1, min(mark.times if mark else 1, 200))
        )
        if mark is None and self.is_setup(nodes):
            self.set_up(row, nodes, start, end)
            return
        entry = Entry(None, nodes, WrittenRow(mark, start, end), tuple(printed))
        for number in numbers:
            if len(self.rows) >= self.room:
                return
            self.work(entry, number)
        if mark and mark.every_other and mark.numbers:
            self.evens = (mark.numbers[-1] % 2, self.entries[-1])

    def _shifted(self, start: int):
        """The pattern's words, with spans counted from this row's place in the text."""
        book = self.pattern.book
        source = book.source
        if source is None:
            return book
        return replace(book, source=Shifted(source, start))

    def is_setup(self, nodes: tuple[Node, ...]) -> bool:
        """Only a start: chain, ring, cast on."""
        works = [one for one in nodes if not isinstance(one, Act)]
        return bool(works) and all(
            isinstance(one, Chain | Start | Edge)
            and not (isinstance(one, Edge) and not one.cast_on)
            for one in works
        )

    def set_up(self, row: WrittenRow, nodes: tuple[Node, ...], start: int, end: int) -> None:
        """The foundation: what the first row is worked into."""
        count = None
        chain = chain_node(nodes)
        cast = next((one for one in nodes if isinstance(one, Edge)), None)
        moves = [
            Move(
                MoveKind.START,
                one.words,
                one.span,
                stitch="ch" if isinstance(one, Chain) else "",
                times=1,
            )
            for one in nodes
        ]
        ring = any(
            "ring" in one.words.lower() or "circle" in one.words.lower() for one in nodes
        ) or any(isinstance(one, Start) for one in nodes)
        joined = any(isinstance(one, Act) and "join" in one.words.lower() for one in nodes)
        if cast is not None and self.pattern.craft is Craft.KNITTING:
            amount = cast.number.at(self.size) if cast.number else 0
            count = amount + (self.below.stitches or 0) if self.below.stitches else amount
            self.below = Below(count)
            moves = [
                replace(move, makes=amount) if move.words == cast.words else move for move in moves
            ]
        elif chain is not None and ring:
            self.below = Below()
        elif chain is not None:
            amount = chain.number.at(self.size)
            self.below = Below(amount if joined else None, 0, {}, amount)
        else:
            self.below = Below()
        label = "Cast on" if cast is not None else "Start"
        words = " ".join(self.text[start:end].split())
        span = span_of(self.pattern.book, start, end)
        self.rows.append(
            CountedRow(
                label,
                None,
                self.is_round,
                words,
                span,
                None,
                count,
                None,
                Verdict.NO_TOTAL,
                tuple(moves),
            )
        )

    def same(self, row: WrittenRow, rule: Rule) -> None:
        """ "Same as 4th row"."""
        entry = self.entry_of(rule.first)
        if entry is None:
            self.plain(row, row.start, row.end)
            return
        printed, _ = printed_in(self.text[row.start : row.end], len(self.pattern.sizes))
        numbers = row.mark.numbers if row.mark and row.mark.numbers else (None,)
        for number in numbers:
            if len(self.rows) < self.room:
                self.work(
                    replace(
                        entry, row=WrittenRow(row.mark, row.start, row.end), printed=tuple(printed)
                    ),
                    number,
                )

    def entry_of(self, number: int) -> Entry | None:
        """The latest row of that number."""
        return next((one for one in reversed(self.entries) if one.number == number), None)

    def ruled(self, row: WrittenRow, rule: Rule, upto: int | None) -> None:
        """Instructions, then a rule, then what follows it."""
        cut = row.start + rule.start
        before = self.text[row.start : cut]
        if ACTION.search(before) and len(before.strip()) > 3:
            self.plain(row, row.start, cut)
        elif (
            row.mark is not None
            and rule.kind in ("last", "rows")
            and row.mark.numbers
            and rule.times is None
        ):
            self.repeat_into(row, rule)
            return
        if rule.kind == "even":
            self.even(row, rule)
        elif rule.kind == "grow":
            self.grow(row, rule, upto)
        else:
            self.repeat(row, rule, upto)
        rest = row.start + rule.end
        after = self.text[rest : row.end]
        if ACTION.search(after) and len(after.split()) > 2:
            self.add(WrittenRow(None, rest, row.end), upto)

    def repeat_into(self, row: WrittenRow, rule: Rule) -> None:
        """ "Rows 3-8: Rep Row 2", "Rows 5-12: rep rows 1-4 twice": the label says how many."""
        entries = self.body_of(rule)
        for index, number in enumerate(row.mark.numbers if row.mark else ()):
            if entries and len(self.rows) < self.room:
                self.work(replace(entries[index % len(entries)], row=row, printed=()), number)

    def body_of(self, rule: Rule) -> list[Entry]:
        """The rows that a repeat calls back."""
        if rule.kind == "last":
            return self.entries[-max(1, min(rule.rows, len(self.entries) or 1)) :]
        found = [
            self.entry_of(number)
            for number in range(rule.first, min(rule.last, rule.first + 200) + 1)
        ]
        return [one for one in found if one is not None]

    def repeat(self, row: WrittenRow, rule: Rule, upto: int | None) -> None:
        """Rows worked again, a number of times or to a goal."""
        entries = self.body_of(rule)
        if not entries:
            return
        times = rule.times
        if times is None and rule.goal is None:
            times = (
                max(0, (upto - 1 - self.number) // len(entries))
                if upto and upto > self.number + 1 and self.number
                else 0
            )
        span = WrittenRow(None, row.start + rule.start, row.start + rule.end)
        for _ in range(min(times if times is not None else RULE_ROWS, RULE_ROWS)):
            if times is None and self.reached(rule.goal):
                break
            for entry in entries:
                if len(self.rows) >= self.room:
                    return
                self.again(
                    replace(entry, printed=()), self.number + 1 if self.number else None, span
                )
                if times is None and self.reached(rule.goal):
                    break

    def reached(self, goal: int | None) -> bool:
        """Whether the stitches on hand are the goal, or can no longer become it."""
        here = self.below.stitches
        return here is None or goal is None or here == goal or here <= 0 or here > 5000

    def again(self, entry: Entry, number: int | None, written: WrittenRow | None = None) -> None:
        """A row worked again under a new number."""
        self.work(
            replace(
                entry,
                row=WrittenRow(None, written.start, written.end) if written else entry.row,
                printed=(),
            ),
            number,
        )

    def even(self, row: WrittenRow, rule: Rule) -> None:
        """ "Knit 4 rows", "work 6 rounds even": the count stays."""
        words = " ".join(self.text[row.start + rule.start : row.start + rule.end].split())
        span = span_of(self.pattern.book, row.start + rule.start, row.start + rule.end)
        for _ in range(min(rule.rows, RULE_ROWS)):
            if len(self.rows) >= self.room:
                return
            number = self.number + 1 if self.number else None
            count = self.below.stitches
            move = Move(
                MoveKind.WORK,
                words,
                span,
                count or 0,
                count or 0,
                stitch="k" if self.pattern.craft is Craft.KNITTING else "st",
                times=max(1, count or 1),
            )
            self.rows.append(
                CountedRow(
                    self.name(None, number),
                    number,
                    self.is_round,
                    words,
                    span,
                    count,
                    count,
                    None,
                    Verdict.NO_TOTAL,
                    (move,),
                )
            )
            self.number = number or self.number

    def grow(self, row: WrittenRow, rule: Rule, upto: int | None) -> None:
        """ "Continue in this way, having 1 more in each section until there are 15"."""
        counts = [one.count for one in self.rows if one.count is not None][-4:]
        if len(counts) < 2 or not self.entries:
            return
        step = counts[-1] - counts[-2] or (counts[-1] - counts[-3] if len(counts) > 2 else 0)
        slow = counts[-1] == counts[-2] and step != 0
        words = " ".join(self.text[row.start + rule.start : row.start + rule.end].split())
        span = span_of(self.pattern.book, row.start + rule.start, row.start + rule.end)
        sections = max(1, self.below.sections)
        goal = rule.goal
        last = row.mark.numbers[-1] if row.mark and row.mark.numbers else None
        count = counts[-1]
        targets = (
            {goal, goal * sections, (goal + 1) * sections, (goal + 2) * sections} if goal else set()
        )
        if step == 0 or not (targets or upto or last):
            return
        exact = self._exact(count, step, goal, sections)
        stop = exact if exact is not None and not last else None
        for index in range(RULE_ROWS):
            number = self.number + 1 if self.number else None
            if (
                (last and number and number > last)
                or (not last and upto and number and number >= upto and stop is None)
                or (stop is not None and count == stop)
            ):
                break
            if not (slow and index % 2 == 0):
                count += step
            if count <= 0 or len(self.rows) >= self.room:
                break
            move = Move(
                MoveKind.WORK, words, span, counts[-1], count, stitch="st", times=max(1, count)
            )
            self.rows.append(
                CountedRow(
                    self.name(row.mark, number),
                    number,
                    self.is_round,
                    words,
                    span,
                    None,
                    count,
                    None,
                    Verdict.NO_TOTAL,
                    (move,),
                    assumed=(f"grows by {step} a round as the rounds before did",),
                )
            )
            self.number = number or self.number
        self.below = Below(count, self.below.spaces, {}, None, self.below.sections)

    def _exact(self, count: int, step: int, goal: int | None, sections: int) -> int | None:
        """The whole count that a goal stands for: all stitches, or those of one section."""
        if goal is None:
            return None
        for target in (goal, goal * sections, (goal + 1) * sections, (goal + 2) * sections):
            if (
                (target - count) * step > 0
                and (target - count) % step == 0
                and abs(target - count) // abs(step) < RULE_ROWS
            ):
                return target
        return None

    def name(self, mark: Mark | None, number: int | None) -> str:
        """ "Round 5", "Next row"."""
        if number is not None:
            is_round = mark.is_round if mark and mark.is_round is not None else self.is_round
            return f"{'Round' if is_round else 'Row'} {number}"
        return (
            mark.name[:1].upper() + mark.name[1:]
            if mark and mark.name
            else "Next round"
            if self.is_round
            else "Next row"
        )

    def options(self, nodes: tuple[Node, ...]) -> list[bool | None]:
        """Whether the row's first chain may count as a stitch, the likelier first."""
        first, body, _, foundation, _ = split_ends(nodes)
        chain = chain_node(nodes)
        work = first_work(body)
        if foundation:
            return self._skipped(work, body)
        height = chain.number.at(self.size) if first and chain else self.carried
        if self.pattern.craft is Craft.KNITTING or not height:
            if work is not None and self.below.chain is not None and not self.rows_worked():
                return self._skipped(work, body)
            return [False]
        if first and chain and chain.counts is not None:
            self.held.setdefault(height, chain.counts)
            return [chain.counts]
        tall = work.stitch.height if work else 3
        if height in self.held:
            return [self.held[height], not self.held[height]]
        if height <= 1 or (tall <= 1 and work is not None):
            return [False]
        silent = self.pattern.silent_counts
        usual = silent if silent is not None else height >= 3
        return [usual, not usual]

    def rows_worked(self) -> bool:
        """Whether any row with stitches stands before."""
        return any(row.count for row in self.rows)

    def _skipped(self, work: Work | None, body: tuple[Node, ...]) -> list[bool | None]:
        told = next(
            (
                one.counts_chain
                for one in body
                if isinstance(one, Act) and one.counts_chain is not None
            ),
            None,
        )
        chain = next((one for one in body if isinstance(one, Chain)), None)
        if chain is not None and chain.counts is not None:
            told = chain.counts
        if told is not None:
            return [told]
        if work is None or work.stitch.height < 3:
            return [False, True] if work is not None and work.stitch.height == 2 else [False]
        return [True, False] if work.place.nth >= work.stitch.height + 1 else [False, True]

    def work(self, entry: Entry, number: int | None) -> None:
        """Works one row and books it."""
        stated, kind, printed = self.stated(entry)
        solved = best(
            entry.nodes,
            self.below,
            self.options(entry.nodes),
            self.size,
            self.carried,
            stated,
            kind,
        )
        row, verdict = entry.row, Verdict.NO_TOTAL
        mark = row.mark
        count = solved.count
        label = self.name(mark, number)
        span = span_of(self.pattern.book, row.start, max(row.end, row.start + 1))
        words = " ".join(self.text[row.start : row.end].split())
        problem = fault_of(
            solved, stated, kind, self.below, self.part, label, span, words, entry.nodes
        )
        if problem is not None and self.doubted and problem.verdict is Verdict.DOES_NOT_FIT:
            # What lies below is itself in doubt, so a misfit says nothing of this row.
            problem = None
        self.doubted = self.still_doubted(solved, stated, problem is not None)
        if problem is not None:
            self.problems.append(problem)
            verdict = problem.verdict
            count = stated if verdict is Verdict.DOES_NOT_FIT and stated is not None else count
        elif stated is not None:
            verdict = Verdict.FITS
        if count is None or (solved.tally.unread and stated is not None):
            count = stated if kind in ("", "sts", "stitches", "st") or count is None else count
        elif (
            stated is not None
            and solved.chained
            and stated == solved.count
            and solved.count is not None
        ):
            height = self.carried or 3
            self.held.setdefault(height, True)
        before = self.below.stitches
        self.rows.append(CountedRow(
            label, number, self.is_round if mark is None or mark.is_round is None else mark.is_round, words, span, before, count, stated,
            verdict, tuple(solved.tally.moves), kind, solved.tally.spaces, mark.side if mark else "", "", solved.tally.takes,
            assumed=assumptions(solved, entry.nodes),
        ))  # fmt: skip
        self.book(solved, count, entry, number)
        _ = printed

    def still_doubted(self, solved: Solved, stated: int | None, wrong: bool) -> bool:
        """Whether the stitches on hand after a row are in doubt; a printed total that agrees ends it."""
        if stated is not None and not wrong:
            return False
        tally = solved.tally
        unsure = tally.unread or tally.unsure or bool(tally.spaces) or solved.count is None
        return self.doubted or unsure or solved.fits is False

    def book(self, solved: Solved, count: int | None, entry: Entry, number: int | None) -> None:
        """What the row leaves for the next."""
        sections = solved.tally.sections if solved.tally.sections > 1 else 0
        self.below = Below(count, solved.tally.spaces, solved.kinds, None, sections)
        self.carried = solved.next_chain
        self.number = number if number is not None else (self.number + 1 if self.number else 0)
        if number is None and not self.number and self._is_first(entry):
            self.number = 1
            self.rows[-1] = replace(self.rows[-1], label=self.name(None, 1), number=1)
        self.entries.append(
            replace(entry, number=number if number is not None else (self.number or None))
        )

    def _is_first(self, entry: Entry) -> bool:
        return entry.row.mark is None and not self.entries and self.pattern.craft is Craft.CROCHET

    def stated(self, entry: Entry) -> tuple[int | None, str, Printed | None]:
        """The printed total of the row for this size: number, kind, where it stands."""
        for one in reversed(entry.printed):
            number = (
                one.numbers[self.size]
                if self.size < len(one.numbers) and len(one.numbers) == len(self.pattern.sizes)
                else one.numbers[0]
            )
            if one.change:
                if self.below.stitches is None:
                    continue
                return self.below.stitches + one.change * number, "", one
            if one.each:
                continue
            return number, one.kind, one
        return None, "", None
