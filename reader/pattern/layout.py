"""Clean text -> parts with their rows and remarks, each with the place it stands."""

from __future__ import annotations

import re
from dataclasses import dataclass, field, replace

from reader.pattern.as_part import tells_as_part
from reader.pattern.at_rows import at_rows
from reader.pattern.bare_calls import calls_rows
from reader.pattern.beginnings import before_cast_on, begins_work, founds
from reader.pattern.blocks import blocks, is_heading
from reader.pattern.by_colour import next_in_colour
from reader.pattern.copies import MANY, make_of
from reader.pattern.fabric_rules import goes_on
from reader.pattern.first_line import title_line
from reader.pattern.for_sizes import (
    row_sizes,
    run_in_sizes,
    sizes_in,
    sizes_inside,
    sizes_leaving,
    sizes_of_total,
)
from reader.pattern.key_lines import tells_meaning
from reader.pattern.labels import Mark, bulleted, labels_in
from reader.pattern.line_words import (
    ACTION,
    BEGINS,
    BY_HAND,
    FINISHING,
    FOUNDED,
    MADE_UP,
    MATERIALS,
    NO_HEADING,
    NOTES_FIRST,
    RUN_IN,
    STITCHY,
)
from reader.pattern.meant_groups import only_meant
from reader.pattern.named_groups import tells_group
from reader.pattern.remark_kinds import kind_of, told_kind
from reader.pattern.rules import plain_rows_only
from reader.pattern.said_only import (
    CROCHETED,
    defines,
    lists_meanings,
    only_says,
    tells_how,
    tells_short,
    without_rules,
)
from reader.pattern.second_half import COMPLETE
from reader.pattern.strands import of_strands
from reader.pattern.telegraphic import IN_A_ROW, before_cast_off, changes_stitches, end_in_number
from reader.pattern.where_begun import only_begun
from reader.terms.numbers import SPELLED

BEGUN = re.compile(
    r"\W*(?:(?:with|using)\b[^.;:]{1,40}?[, ]\s*)?(?:loosely\s+)?(?:ch|chain|cast on|co)\s+\d", re.I
)
"""How the first line of the work itself begins."""
SAID_FIRST = re.compile(r"[^.;:]+[.;]\s+(?=[^.;:]{0,40}\bcast on \d)", re.IGNORECASE)
"""A sentence before the one that casts on: "Made in two halves. For each half cast on 40"."""
THEN_BEGUN = re.compile(
    r"[.;]\s+(?=(?:(?:cast on|co)\s|[^.;]{0,90}?\b(?:(?:pick|k|knit) up|pu)\s"
    rf"(?:(?:and|&)\s\w+\s)?)(?:\d|(?:{SPELLED})\b))", re.IGNORECASE,
)
"""Behind a remark, where the work begins: "Multiple of 12 sts plus 1. Cast on 37 sts."."""


@dataclass(frozen=True, slots=True)
class WrittenRow:
    """A row as written: its label (None where it has none) and the clean offsets of its words.
    sizes: those (0-based) it is worked in, None for all.
    """

    mark: Mark | None
    start: int
    end: int
    sizes: frozenset[int] | None = None


@dataclass(frozen=True, slots=True)
class WrittenNote:
    """Words between rows, of a kind: note, materials, gauge, finishing, key, unread."""

    kind: str
    start: int
    end: int


@dataclass(slots=True)
class WrittenPart:
    """A part: its name, how many to make, what stands in it in order."""

    name: str
    make: int = 1
    items: list[WrittenRow | WrittenNote] = field(default_factory=list)


@dataclass(frozen=True, slots=True)
class Layout:
    """A whole text laid out."""

    title: str
    parts: tuple[WrittenPart, ...]
    notes: tuple[WrittenNote, ...]


def lay_out(text: str, sizes: tuple[str, ...] = ()) -> Layout:
    """The layout of any clean text; sizes: their names, where rows may be for some of them only."""
    reading = _LayingOut(text, sizes)
    for start, end in blocks(text):
        reading.sized(start, end)
    return reading.done()


SO_OFTEN = re.compile(
    r"^\W*(?:continue|cont|work|carry on|keep (?:going|on)|proceed|go on)\b[^.;:\d]{0,40}\b"
    rf"(?:\d+|{SPELLED}) (?:(?:more |additional |further )?times|x more)\b",
    re.IGNORECASE,
)
"""Rows that go on so often, told without naming them: "continue as established 9 times more"."""


def _works(words: str) -> bool:
    """Whether words do something with stitches."""
    if STITCHY.search(words) is None:
        return calls_rows(words) or SO_OFTEN.match(words) is not None or goes_on(words)
    works = ACTION.search(words) is not None or plain_rows_only(words)
    return works or calls_rows(words) or at_rows(" ".join(words.split())) is not None


class _LayingOut:
    def __init__(self, text: str, sizes: tuple[str, ...]) -> None:
        self.text = text
        self.sizes = sizes
        self.here: frozenset[int] | None = None
        self.gone: dict[int, int] = {}
        self.headed, self.last = 0, 0
        self.crocheted = CROCHETED.search(text) is not None
        self.begun = False
        self.title = ""
        self.parts: list[WrittenPart] = [WrittenPart("")]
        self.notes: list[WrittenNote] = []
        self.section = ""

    def sized(self, start: int, end: int) -> None:
        """Sorts one block, worked in all sizes or in those that it, or a line above it, names."""
        words = self.text[start:end]
        inside = sizes_inside(words, self.sizes)
        if inside is not None:
            self.sized(start, start + inside)
            self.sized(start + inside, end)
            return
        named = sizes_in(words, self.sizes) if "\n" not in words.strip() else None
        if named is not None:
            self.here, self.headed = named, end
            self.note("note", start, end)
            return
        leaving = sizes_leaving(words[bulleted(words) :], self.sizes)
        if leaving is not None:
            self.gone.update(dict.fromkeys(*leaving))
            self.note("note", start, end)
            return
        parted = self.text.count("\n", self.last, start) > 1
        if parted and self.headed < self.last:
            # Behind a blank line the rows are for all again, unless the words above stood apart.
            self.here = None
        run_in = run_in_sizes(words, self.sizes)
        kept, self.last = self.here, end
        start, self.here = (start + run_in[0], run_in[1]) if run_in else (start, kept)
        self.block(start, end)
        self.here = kept if run_in else self.here

    def add_row(self, mark: Mark | None, start: int, end: int) -> None:
        """Keeps a row; its label may name its sizes."""
        label = self.text[mark.start : mark.end].partition("(")[2] if mark is not None else ""
        named = row_sizes(self.text[start:end], self.sizes) if mark is not None else None
        if named is not None and mark is not None:
            # What names the sizes is the label's.
            mark, start = replace(mark, end=start + named[0]), start + named[0]
            self.parts[-1].items.append(WrittenRow(mark, start, end, named[1]))
            self.begun = True
            return
        sizes = sizes_in(label.strip(" :."), self.sizes) or self.here
        sizes = self.staying(sizes or sizes_of_total(self.text[start:end], self.sizes), mark)
        self.begun = True
        self.parts[-1].items.append(WrittenRow(mark, start, end, sizes))

    def staying(self, sizes: frozenset[int] | None, mark: Mark | None) -> frozenset[int] | None:
        """The sizes of a row without those that were sent past it."""
        if not self.gone:
            return sizes
        number = mark.numbers[0] if mark is not None and mark.numbers else 0
        past = {size for size, row in self.gone.items() if not row or number < row}
        return (sizes or frozenset(range(len(self.sizes)))) - past if past else sizes

    def block(self, start: int, end: int) -> None:
        """Sorts one block into the part it belongs to."""
        begin = start
        while start < end and self.text[start] in " #\t":
            start += 1
        start += bulleted(self.text[start:end])
        titled = "# " in self.text[begin:start]
        words = self.text[start:end].strip()
        if not words or set(words) <= set("-=*_~. "):
            return
        marks = labels_in(self.text, start, end)
        if not (marks or self.lists(words)) and is_heading("# " * titled + words):
            self.heading(words)
            return
        if kind := told_kind(words, marks, start):
            self.materials(kind, start, end)
            return
        meant = not self.begun and (tells_group if self.crocheted else tells_meaning)(words)
        key = not marks and (lists_meanings(words) or tells_how(words) or tells_short(words))
        meant = meant or (self.crocheted and only_meant(words))
        if key or (meant and not marks):
            self.note("key", start, end)
            return
        run_in = RUN_IN.match(words)
        if (
            run_in
            and (not marks or marks[0].start > start)
            and not NO_HEADING.match(words)
            and not (self.begun and end_in_number(words[run_in.end() :]))
        ):
            head = run_in["head"] or run_in["caps"] or run_in["dash"]
            if marks or not (self.explains(head) or defines(words, head)):
                many = MANY.match(words, run_in.end())
                self.heading(head + (f" (make {many['n']})" if many else ""))
                start += many.end() if many else run_in.end()
                marks = labels_in(self.text, start, end)
            else:
                self.note("key", start, end)
                return
        self.rows(start, end, marks)

    def lists(self, words: str) -> bool:
        """Whether words head nothing: several lines, or a stitch in a list of what is short."""
        return "\n" in words or (
            self.section == "key" and not words.isupper() and STITCHY.search(words) is not None
        )

    def materials(self, kind: str, start: int, end: int) -> None:
        """A remark of a kind; words behind the materials that begin the work are a row."""
        founded = FOUNDED.search(self.text, start, end) if kind == "materials" else None
        self.note(kind, start, founded.start() if founded else end)
        if founded:
            self.add_row(None, founded.end(), end)

    def only_notes(self, words: str, start: int) -> bool:
        """Whether words without a label work nothing."""
        if BY_HAND.match(words) or (not self.begun and NOTES_FIRST.match(words)):
            return True
        begun = self.crocheted and only_begun(words)
        return begun or only_says(words) or (not self.begun and self.begins_nothing(words, start))

    def begins_nothing(self, words: str, start: int) -> bool:
        """Whether words before the first row of all start no work."""
        if not self.crocheted:
            return before_cast_on(words, start, self.text)
        return bool(told := without_rules(words)) and not begins_work(told)

    def explains(self, head: str) -> bool:
        """Whether a head followed by words stands in a list of stitches."""
        return self.section == "key" and not head.isupper()

    def heading(self, words: str) -> None:
        """A new part, or the title of the whole."""
        name, make = make_of(words)
        if FINISHING.match(name) or MATERIALS.match(name):
            self.section = "finishing" if FINISHING.match(name) else kind_of(name)
            return
        self.section, self.here, self.gone = "", None, {}
        if not self.title and not self.begun:
            self.title = name
        if not self.parts[-1].items and len(self.parts) > 0:
            self.parts[-1] = WrittenPart(name, make)
        else:
            self.parts.append(WrittenPart(name, make))

    def note(self, kind: str, start: int, end: int) -> None:
        """A remark of the whole text before the first row, of the part after it."""
        one = WrittenNote(kind, start, end)
        if self.begun and kind not in ("materials", "gauge", "key"):
            self.parts[-1].items.append(one)
        else:
            self.notes.append(one)

    def rows(self, start: int, end: int, marks: list[Mark]) -> None:
        """The rows of a block; words before its first label are a row of their own when they work
        something.
        """
        here = start
        if not marks or marks[0].start > start:
            stop = marks[0].start if marks else end
            self.unlabelled(here, stop)
        for index, mark in enumerate(marks):
            stop = marks[index + 1].start if index + 1 < len(marks) else end
            words = " ".join(self.text[mark.end : stop].split())
            if self.only_told(mark, words):
                self.note("note", mark.start, stop)
            elif mark.is_heading and FINISHING.match(mark.name):
                self.section = "finishing"
                self.unlabelled(mark.end, stop)
            elif mark.is_heading:
                if BEGINS.match(words):
                    self.heading(mark.name)
                self.add_row(None, mark.end, stop)
            else:
                self.section = ""
                knits = not self.crocheted
                last = before_cast_off(self.text, mark, stop) if knits else stop
                self.add_row(mark, mark.end, last)
                if last < stop:
                    self.add_row(None, last, stop)

    def only_told(self, mark: Mark, words: str) -> bool:
        """Whether words behind a label are no row's; a colour alone is, behind the row before."""
        if not of_strands(words) and (STITCHY.search(words) or IN_A_ROW.search(words)):
            return False
        items = self.parts[-1].items
        last = items[-1].mark if items and isinstance(items[-1], WrittenRow) else None
        return not next_in_colour(last, mark, words)

    def unlabelled(self, start: int, end: int) -> None:
        """Words without a label: instructions, or a remark."""
        words = self.text[start:end]
        if BEGUN.match(words):
            # The work has begun: what a heading above listed is over.
            self.section = ""
        if self.section in ("materials", "key", "note", "gauge") and not founds(words):
            self.note(self.section, start, end)
            return
        said = SAID_FIRST.match(words)
        if said and not self.begun and not ACTION.search(said.group()):
            self.note("note", start, start + said.end())
            start, words = start + said.end(), words[said.end() :]
        by_hand = FINISHING.match(words.strip()) is not None or of_strands(words)
        by_hand = by_hand or (self.begun and MADE_UP.match(words) is not None)
        if by_hand or (self.only_notes(words, start) and not self.quotes_a_part(words)):
            begun = THEN_BEGUN.search(words)
            kind = "finishing" if by_hand else "note"
            self.note(kind, start, start + begun.end() if begun else end)
            if begun:
                self.unlabelled(start + begun.end(), end)
        elif self.works(words):
            self.add_row(None, start, end)
        else:
            self.note("note", start, end)

    def works(self, words: str) -> bool:
        """Whether words without a label are a row's."""
        if self.quotes_a_part(words) or _works(without_rules(words)) or self.is_other_half(words):
            return True
        return self.begun and not self.crocheted and changes_stitches(words)

    def is_other_half(self, words: str) -> bool:
        """Whether knitting words tell of the second side of what the first was told of."""
        return self.begun and not self.crocheted and COMPLETE.match(words.lstrip()) is not None

    def quotes_a_part(self, words: str) -> bool:
        """Whether words tell of a piece by one before it: "work same as back to armhole"."""
        named = {f" {part.name.lower()} " for part in self.parts if part.items}
        return tells_as_part(words, named, self.crocheted)

    def done(self) -> Layout:
        """The finished layout; parts without a row give their remarks to the whole."""
        kept: list[WrittenPart] = []
        for part in self.parts:
            if any(isinstance(item, WrittenRow) for item in part.items):
                kept.append(part)
            else:
                self.notes += [item for item in part.items if isinstance(item, WrittenNote)]
        if not self.title:
            self.title = self.first_line()
        return Layout(self.title, tuple(kept), tuple(self.notes))

    def first_line(self) -> str:
        """The first line as the title, where it is a few words and no instruction; else ""."""
        line = title_line(self.text)
        for at, note in enumerate(self.notes[:1] if line else ()):
            rest = max(note.start, self.text.index(line) + len(line))
            self.notes[at] = WrittenNote(note.kind, rest, note.end)
        return line
