"""Pattern + size -> CountedPattern: every row worked in order, ranges and repeated rows opened,
problems as values.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from reader.counts.by_rule import add
from reader.counts.counted import CountedPart, CountedPattern, Problem, Remark, Verdict
from reader.counts.divisions import heard
from reader.counts.entries import Entry
from reader.counts.evens import Evens
from reader.counts.fabric import Below
from reader.counts.ledger import Ledger
from reader.counts.narrowed import begin_on
from reader.counts.next_row import coming_rows
from reader.counts.one_size import rows_for
from reader.counts.pieces import Piece, keep_piece
from reader.counts.solutions import Solutions
from reader.counts.told_together import in_their_place
from reader.counts.waiting import Lot
from reader.pattern.cursor import span_of as origin
from reader.pattern.layout import WrittenNote, WrittenRow
from reader.pattern.parser import Pattern
from reader.terms.stitches import Craft
from reader.text.span import Span

MISSPELT = '"{}" is taken for "{}", misspelt'
ROWS = 20_000
"""Rows opened in one pattern at most; what lies beyond is told in a problem."""


def count_pattern(pattern: Pattern, size: int = 0) -> CountedPattern:
    """The counted pattern for one size (0-based; a size that does not exist counts as the last)."""
    size = max(0, min(size, len(pattern.sizes) - 1))
    pattern = pattern.of_size(size)
    parts, problems = list[CountedPart](), list[Problem]()
    earlier: dict[str, list[Entry]] = {}
    pieces, solutions, lots = dict[str, Piece](), Solutions(), list[Lot]()
    left, copies, opened = Below(), 1, 0
    for at, part in enumerate(pattern.layout.parts):
        ledger = Ledger(pattern.of_part(at), size, part.name, ROWS - opened, earlier, left, copies)
        ledger.pieces, ledger.solutions, ledger.lots = pieces, solutions, lots
        evens = _begun(ledger, not parts)
        notes: list[Remark] = []
        items = in_their_place(rows_for(part.items, size, len(pattern.sizes)))
        rows = coming_rows(items, ledger.text)
        for item, coming, ledger.coming in zip(items, _next_numbers(items), rows, strict=True):
            if isinstance(item, WrittenNote):
                notes.append(remark(pattern, item, len(ledger.rows)))
                if item.kind == "note" and ledger.pattern.craft is Craft.KNITTING:
                    heard(ledger, item.start, item.end)
            else:
                add(ledger, item, coming, evens)
        evens.finish(ledger)
        parts.append(
            CountedPart(part.name or pattern.title, part.make, tuple(ledger.rows), tuple(notes))
        )
        problems += ledger.problems
        earlier[part.name] = ledger.entries
        keep_piece(pieces, ledger)
        left, copies = replace(ledger.below, set_aside=ledger.waiting), part.make
        opened += len(ledger.rows)
    by_kind: dict[str, list[Remark]] = {}
    for note in pattern.layout.notes:
        by_kind.setdefault(note.kind, []).append(remark(pattern, note, None))
    return CountedPattern(
        pattern.title, pattern.craft.value, pattern.terms.value, pattern.terms_why, pattern.sizes,
        size, tuple(parts),
        mark_echoes(problems), tuple(by_kind.get("materials", ())), tuple(by_kind.get("gauge", ())),
        (*by_kind.get("note", ()), *by_kind.get("unread", ())), tuple(by_kind.get("finishing",
        ())), pattern.key, tuple(MISSPELT.format(*one) for one in pattern.source.misspelt),
    )  # fmt: skip


def _begun(ledger: Ledger, first: bool) -> Evens:
    """Rows for every other row, none yet; the first part begins on what the remarks before it say.
    """
    if first and ledger.pattern.craft is Craft.KNITTING:
        for said in ledger.pattern.layout.notes:
            begin_on(ledger, ledger.in_figures(said.start, said.end), said.kind)
    return Evens()


def remark(pattern: Pattern, note: WrittenNote, before_row: int | None) -> Remark:
    """A note as a remark with its words and place."""
    words = " ".join(pattern.source.text[note.start : note.end].split())
    return Remark(note.kind, words, span_of(pattern, note.start, note.end), before_row)


def span_of(pattern: Pattern, start: int, end: int) -> Span:
    """The span in the maker's text of two clean offsets."""
    return origin(pattern.book, start, end)


def _next_numbers(items: Sequence[WrittenRow | WrittenNote]) -> list[int | None]:
    """For each item of a part, the number on the next label: rows by rule run up to it."""
    numbers: list[int | None] = []
    coming: int | None = None
    for item in reversed(items):
        numbers.append(coming)
        if isinstance(item, WrittenRow) and item.mark is not None and item.mark.numbers:
            coming = item.mark.numbers[0]
    return numbers[::-1]


ECHO = "An echo of the problem before: "


def mark_echoes(problems: list[Problem]) -> tuple[Problem, ...]:
    """Problems in order; one that shifts by the same amount as the one before in its part is an
    echo, and so is a question asked of the same words again, in a row that repeats them.
    """
    out: list[Problem] = []
    last: dict[str, int] = {}
    asked: set[tuple[str, int, int]] = set()
    for one in problems:
        place = (one.part, one.span.start, one.span.end)
        if one.verdict is Verdict.UNCLEAR and place in asked:
            one = replace(one, verdict=Verdict.ECHO, message=ECHO + one.message)
        elif one.verdict is Verdict.UNCLEAR:
            asked.add(place)
        if (
            one.verdict is Verdict.TOTAL_DISAGREES
            and one.printed is not None
            and one.counted is not None
        ):
            shift = one.counted - one.printed
            if last.get(one.part) == shift and shift:
                one = replace(one, verdict=Verdict.ECHO, message=ECHO + one.message, mend="")
            else:
                last[one.part] = shift
        out.append(one)
    return tuple(out)
