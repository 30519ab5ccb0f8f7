"""Rows that are told once and come again between others: "row 2 and all even rows", "2nd, 4th and
6th rows".
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace

from reader.counts.entries import Entry
from reader.counts.ledger import Ledger
from reader.pattern.labels import Mark
from reader.pattern.layout import WrittenRow

PARITIES = {"even": 0, "2nd": 0, "second": 0, "odd": 1, "uneven": 1}
"""What the words tell of the numbers; "all other rows", "wrong side rows": those left out first."""

CALLED_BACK = re.compile(
    r"(?<=[.;])\s+(?=rep(?:eat)?\b(?!\s*(?:from\s*)?\*)[^.;*]{0,40}\b(?:rows?|rounds?|rnds?)\b)",
    re.IGNORECASE,
)
"""Behind a row, where rows are called back: that is not said again for each row of a list."""


def before_calls(text: str, row: WrittenRow) -> tuple[WrittenRow, WrittenRow | None]:
    """A row of a list of rows ("6th and 8th"), and the words behind it that call rows back."""
    several = row.mark is not None and len(row.mark.numbers) > 1
    then = CALLED_BACK.search(text, row.start, row.end) if several else None
    if then is None or not text[row.start : then.start()].strip():
        return row, None
    return replace(row, end=then.start()), WrittenRow(None, then.end(), row.end, row.sizes)


class Evens:
    """The rows of "row 2 and all even rows", kept to be filled in between labels."""

    def __init__(self) -> None:
        self.parity: int | None = 0
        self.entry: Entry | None = None
        self.waiting: dict[int, WrittenRow] = {}
        self.work: Callable[[WrittenRow], None] = lambda row: None

    def keep(self, mark: Mark, entry: Entry) -> None:
        """Remembers a row that stands for every other one."""
        self.parity = mark.numbers[-1] % 2 if mark.numbers else PARITIES.get(mark.every_other)
        self.entry = entry

    def fill(self, ledger: Ledger, mark: Mark | None) -> None:
        """Works the rows that stand between the last one and a label, or that are due before words
        without one: "repeat these 8 rows" behind "6th and 8th rows".
        """
        while mark is None and ledger.number + 1 in self.waiting and not ledger.full():
            self.one(ledger)
        if mark is None or not mark.numbers:
            return
        if mark.numbers[0] <= ledger.number:
            self.finish(ledger)
        while ledger.number + 1 < mark.numbers[0] and not ledger.full():
            if not self.one(ledger):
                return

    def one(self, ledger: Ledger) -> bool:
        """Works the row that stands for the next number; False where none does."""
        number = ledger.number + 1
        row = self.waiting.pop(number, None)
        if row is not None and row.mark is not None:
            self.work(replace(row, mark=replace(row.mark, numbers=(number,))))
            return True
        if self.parity is None:
            self.parity = number % 2
        if self.entry is None or number % 2 != self.parity:
            return False
        ledger.again(self.entry, number)
        return True

    def finish(self, ledger: Ledger) -> None:
        """Works the rows that still wait and follow the last one."""
        while self.waiting and ledger.number + 1 in self.waiting and not ledger.full():
            self.one(ledger)
        self.waiting.clear()

    def wait(self, ledger: Ledger, row: WrittenRow) -> WrittenRow:
        """Of a list of rows told together ("2nd, 4th and 6th"), those that follow each other at
        once; the others wait for their turn.
        """
        mark = row.mark
        if mark is None or len(mark.numbers) < 2 or mark.numbers[0] <= ledger.number:
            return row
        first = mark.numbers[0]
        now = tuple(n for at, n in enumerate(mark.numbers) if n == first + at)
        if len(now) == len(mark.numbers) or list(mark.numbers) != sorted(mark.numbers):
            return row
        self.waiting |= dict.fromkeys(mark.numbers[len(now) :], row)
        return replace(row, mark=replace(mark, numbers=now))
