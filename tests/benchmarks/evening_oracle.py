"""The true place and the true totals of an evening, kept apart from the session.

Totals and stitches are read from the pattern's text by a few rules of its own; where the work is
is followed by counting through a flat list, with none of the session's or the plan's finders.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, field

from reader.plan.step import Plan, RowKind

WORDS = (
    "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
    "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen",
    "nineteen",
)  # fmt: skip
TENS = ("", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety")
ROW = re.compile(
    r"(?:Rnd|Row)s? (\d+)(?:-(\d+))?\b[^:]*:(.*?)(?:\((\d+)\)|(?P<first>\d+)(?: \(\d+\))? sts)\s*$"
)
"""A row of the demonstration patterns, with its total, of several sizes the first one's."""
IN_ONE_BREATH = (
    ("go to row ", "row"), ("go to round ", "row"), ("rip back to row ", "rip"),
    ("rip back to round ", "rip"), ("i have ", "have"),
)  # fmt: skip
GRAINS = ("stitch group", "phrase", "whole row")
UNDO_S = 10.0


ALOUD = (("BO", "bind off"), ("sts", "stitches"), ("CO", "cast on"))
"""Short forms of the demonstration patterns that stand where a row has no label."""


def aloud(written: str) -> str:
    """Words of the paper as the maker says them: "bind off all stitches"."""
    for short, full in ALOUD:
        written = re.sub(rf"\b{short}\b", full, written)
    return written.lower()


def in_words(number: int, dash: str = "-") -> str:
    """0 to 99 in words: "twenty-three"; dash: what stands between tens and units."""
    if number < 20:
        return WORDS[number]
    tens, unit = divmod(number, 10)
    return TENS[tens] + (f"{dash}{WORDS[unit]}" if unit else "")


@dataclass(frozen=True)
class Spot:
    """One smallest step, as the maker's paper has it.

    total: the row's printed total. done: stitches made before the step, None where the rules here
    do not tell; made: the same by the plan. clues: words that an honest "where am I" holds.
    """

    part: int
    row: int
    step: int
    number: int | None
    total: int | None
    done: int | None
    clues: tuple[str, ...]
    made: int
    counted: bool
    worked: bool
    begins: str
    phrase: bool
    last: bool


def printed_totals(text: str) -> dict[tuple[str, int], tuple[int, int]]:
    """(heading, row number) -> printed total and stitches of one pass (0 without a repeat)."""
    found: dict[tuple[str, int], tuple[int, int]] = {}
    heading = ""
    for line in text.splitlines():
        if re.fullmatch(r"[A-Z][A-Z ]+(?: \(make \d+\))?", line.strip()):
            heading = line.strip().partition(" (")[0].lower()
        row = ROW.match(line)
        if row:
            body = re.search(r"\*(.*?); rep from \*", row[3])
            for number in range(int(row[1]), int(row[2] or row[1]) + 1):
                found[heading, number] = (
                    int(row[4] or row["first"]),
                    stitches(body[1]) if body else 0,
                )
    return found


def stitches(body: str) -> int:
    """Stitches that "sc in next 3 sts, inc in next st" leaves; an unknown word counts nothing."""
    made = 0
    for piece in body.split(","):
        times = re.search(r"in next (\d+) sts", piece)
        if re.match(r"\s*inc\b", piece):
            made += 2
        elif re.match(r"\s*sc2tog\b", piece):
            made += 1
        elif re.match(r"\s*sc\b", piece):
            made += int(times[1]) if times else 1
    return made


def spots_of(plan: Plan, text: str) -> tuple[Spot, ...]:
    """Every smallest step of the plan in working order, with what the paper says of it."""
    printed = printed_totals(text)
    spots = []
    for part_at, part in enumerate(plan.parts):
        name = part.name.lower()
        copy = (f"the {('first', 'second', 'third')[part.copy - 1]}",) if part.copies > 1 else ()
        for row_at, row in enumerate(part.rows):
            total, each = printed.get((name, row.number or -1), (None, 0))
            label = _label(row.label, row.number)
            for step in row.groups:
                one = step.passes[-1] if step.passes else None
                turn = _pass(one.number, one.of or 0) if one else ""
                told = label or aloud(step.written.rstrip(".").split(",")[0])
                done = each * (one.number - 1) if one and each else 0 if step.starts_row else None
                passed = turn.replace("last", "last pass") if "last" in turn else f"pass {turn}"
                if not turn and len(row.groups) > 1:
                    passed = f"step {in_words(step.place.step + 1)} of {in_words(len(row.groups))}"
                clues = (name, *copy, told, *([passed] if turn or len(row.groups) > 1 else []))
                if row.number is None and sum(one.label == row.label for one in part.rows) > 1:
                    share = f"{in_words(row_at + 1)} of {in_words(len(part.rows))}"
                    clues = (*clues, f"{share} in this part")
                begins = label if step.starts_row and label else turn
                spots.append(
                    Spot(
                        part_at, row_at, step.place.step, row.number, total, done, clues, step.done,
                        row.count is not None,
                        row.kind is RowKind.WORK,
                        begins, step.place.step in row.phrases, step.ends_row,
                    )
                )  # fmt: skip
    return tuple(spots)


def _label(label: str, number: int | None) -> str:
    if number is None:
        return label.lower()
    return f"{label.split()[0].lower()} {in_words(number)}"


def _pass(number: int, of: int) -> str:
    which = "last" if number == of > 1 else in_words(number)
    return f"{which} of {in_words(of)}"


def holds(answer: str, clue: str) -> bool:
    """Whether whole words of the clue stand in the answer."""
    return re.search(rf"(?<![\w-]){re.escape(clue)}(?![\w-])", answer.lower()) is not None


def onward(spots: tuple[Spot, ...], at: int, grain: str) -> int:
    """The spot after what is read at a spot; the same where that was the last."""
    here = spots[at]
    for later in range(at + 1, len(spots)):
        one = spots[later]
        new_row = (one.part, one.row) != (here.part, here.row)
        if new_row or grain == GRAINS[0] or (grain == GRAINS[1] and one.phrase):
            return later
    return at


def backward(spots: tuple[Spot, ...], at: int, grain: str) -> int:
    """The spot before: the nearest earlier one at which something is read."""
    for earlier in range(at - 1, -1, -1):
        one = spots[earlier]
        if one.step == 0 or grain == GRAINS[0] or (grain == GRAINS[1] and one.phrase):
            return earlier
    return at


@dataclass
class Ledger:
    """What each heard phrase should do to the place, worked out a second time.

    mode: what is waited for. moves: (when, from where), the latest last.
    """

    spots: tuple[Spot, ...]
    names: tuple[str, ...]
    at: int = 0
    grain: str = GRAINS[0]
    mode: str = "step"
    pending: tuple[str, int] = ("", 0)
    moves: list[tuple[float, int]] = field(default_factory=list)
    marks: list[tuple[str, int]] = field(default_factory=list)
    kinds: list[str] = field(default_factory=list)
    by: int = 1
    tally: int = 0
    now: float = 0.0

    def heard(self, words: str, now: float) -> None:
        """A phrase that the ear gave, right or wrong."""
        self.now = now
        if self.mode == "paused" and words not in ("carry on", "where am i", "finish for today"):
            return
        answers = {
            "row": self._row_number,
            "rip": self._row_number,
            "part": self._part_name,
            "confirm": self._confirmed,
            "counting": self._counted,
            "have": self._have,
            "mark": self._mark_named,
            "which mark": self._which_mark,
            "gauge": self._one_number,
            "grams": self._one_number,
            "note": self._one_number,
            "gather": self._listed,
            "find": self._listed,
        }
        if self.mode in answers and answers[self.mode](words):
            return
        self._plain(words)

    def _plain(self, words: str) -> None:
        for opening, mode in IN_ONE_BREATH:
            if words.startswith(opening):
                self.mode, number = mode, words.removeprefix(opening)
                self._have(number) if mode == "have" else self._row_number(number)
                return
        if self.mode == "more" and words not in ("no",):
            self.mode = "step"
        modes = {
            "go to row": "row" if self._numbers() else "step",
            "rip back": "rip",
            "go to part": "part",
            "check my count": "have" if self.spots[self.at].counted else "step",
            "my gauge": "gauge",
            "note this": "note",
            "pause": "paused",
            "stop listening": "step",
            "carry on": "step",
            "more words": "more",
        }
        if words in modes:
            self.mode = modes[words]
        elif words in ("finish for today", "start over again"):
            self.mode, self.pending = "confirm", (words, 0)
        elif words == "count along" and self.spots[self.at].worked:
            self.mode, self.by = "counting", 1
            self.tally = self.spots[self.at].made
        elif words == "no" and self.mode != "step":
            self.mode = "step"
        else:
            self._move(words)

    def _move(self, words: str) -> None:
        here = self.spots[self.at]
        if words == "next":
            self._to(onward(self.spots, self.at, self.grain), stays=True)
        elif words in ("go back", "back"):
            self._to(backward(self.spots, self.at, self.grain), stays=True)
        elif words == "row done":
            self._to(onward(self.spots, self.at, GRAINS[2]), stays=True)
        elif words == "start of the row":
            self._to(self.at - here.step)
        elif words in ("undo that", "no"):
            if self.moves and self.now - self.moves[-1][0] <= UNDO_S:
                self.at = self.moves.pop()[1]
                self.mode = "step"
        elif words in ("mark this place", "lifeline here"):
            kind = words.split()[0]
            many = 1 + sum(k == kind for k in self.kinds)
            self.marks.append((f"{kind} {in_words(many, ' ')}", self.at))
            self.kinds.append(kind)
            self.mode = "mark"
        elif words == "back to the mark" and len(self.marks) == 1:
            self._to(self.marks[0][1])
        elif words == "back to the mark" and self.marks:
            self.mode = "which mark"
        elif words in ("bigger steps", "smaller steps"):
            step = 1 if words == "bigger steps" else -1
            self.grain = GRAINS[max(0, min(2, GRAINS.index(self.grain) + step))]

    def _to(self, spot: int, stays: bool = False) -> None:
        """A move; stays: at either end there is no move at all."""
        if not (stays and spot == self.at):
            self.moves.append((self.now, self.at))
        self.at, self.mode = spot, "step"

    def _numbers(self) -> set[int]:
        part = self.spots[self.at].part
        return {one.number for one in self.spots if one.part == part and one.number is not None}

    def first_of_row(self, part: int, number: int) -> int:
        """The first spot of a numbered row of a part."""
        return next(
            at for at, one in enumerate(self.spots) if one.part == part and one.number == number
        )

    def _row_number(self, words: str) -> bool:
        numbers = {in_words(number, " "): number for number in self._numbers()}
        named = [at for name, at in self.marks if name == words and at <= self.at]
        if named and self.mode == "rip":
            self.mode, self.pending = "confirm", ("rip", named[-1])
            return True
        if words not in numbers:
            return words in ("again", "say again", "hush")
        to = self.first_of_row(self.spots[self.at].part, numbers[words])
        alike = {13: 30, 30: 13, 14: 40, 40: 14, 15: 50, 50: 15, 16: 60, 60: 16}
        if self.mode == "rip":
            if to <= self.at:
                self.mode, self.pending = "confirm", ("rip", to)
        elif alike.get(numbers[words]) in self._numbers():
            self.mode, self.pending = "confirm", ("rip", to)
        else:
            self._to(to)
        return True

    def _part_name(self, words: str) -> bool:
        numbers = [in_words(at + 1, " ") for at in range(len(self.names))]
        if words not in self.names and words not in numbers:
            return words in ("again", "say again", "hush")
        named = self.names if words in self.names else numbers
        part = named.index(words)
        self._to(next(at for at, one in enumerate(self.spots) if one.part == part))
        return True

    def _have(self, words: str) -> bool:
        if words in ("again", "say again", "hush"):
            return True
        self.mode = "step"
        return True

    def told(self, answer: str) -> None:
        """What an answer makes plain about what is waited for now."""
        signs = (
            ("Shall I help to find where?", "confirm"),
            ("The slip is", "step"),
            ("How many are there?", "find"),
            ("to gather. Say yes", "gather"),
            ("are left? Or no.", "grams"),
            (" missing", "step"),
            ("You have everything", "step"),
            ("The note is kept", "step"),
        )
        for sign, mode in signs:
            if sign in answer:
                self.mode, self.pending = mode, ("find", 0)

    def _mark_named(self, words: str) -> bool:
        if words in ("again", "say again", "hush", "next", "no"):
            return words in ("again", "say again", "hush")
        rest = [one for one in self.marks[:-1] if one[0] != words]
        self.marks = [*rest, (words, self.marks[-1][1])]
        self.mode = "step"
        return True

    def _which_mark(self, words: str) -> bool:
        found = [at for name, at in self.marks if name == words]
        if found:
            self._to(found[-1])
        return bool(found) or words in ("again", "say again", "hush")

    def _one_number(self, words: str) -> bool:
        if words in ("next", "no", "again", "say again", "hush"):
            self.mode = "step" if words == "no" else self.mode
            return words != "next"
        self.mode = "step"
        return True

    def _listed(self, words: str) -> bool:
        if words in ("carry on", "no") and (words, self.mode) != ("no", "gather"):
            self.mode = "step"
        return True

    def _confirmed(self, words: str) -> bool:
        what, to = self.pending
        if words == "yes" and what == "find":
            return True
        if words == "yes":
            self.mode = "closed" if what == "finish for today" else "step"
            if what == "start over again":
                self._to(0)
            elif what == "rip":
                self._to(to)
            return True
        return words in ("again", "say again", "hush")

    def _counted(self, words: str) -> bool:
        numbers = {in_words(n, " "): n for n in range(100)}
        if words == "undo that":
            self.tally = max(0, self.tally - self.by)
            return True
        if words in ("every stitch", "every five", "every ten"):
            self.by = {"every stitch": 1, "every five": 5, "every ten": 10}[words]
            return True
        if words != "next" and words not in numbers:
            return False
        wanted = self.tally + self.by
        self.tally = numbers.get(words, wanted)
        total = self.spots[self.at].total
        if self.tally == wanted and total is not None and wanted >= total:
            self._to(onward(self.spots, self.at, GRAINS[2]), stays=True)
        return True
