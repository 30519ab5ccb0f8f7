"""One instruction with the stitches before it -> the stitches after it, and what is wrong with it.
"""

from __future__ import annotations

from dataclasses import dataclass

from reader.counts.by_rule import add
from reader.counts.counted import Problem
from reader.counts.evens import Evens
from reader.counts.fabric import plain as plain_row
from reader.counts.ledger import Ledger
from reader.pattern.evidence import craft_of
from reader.pattern.layout import WrittenRow
from reader.pattern.parser import parse_pattern


@dataclass(frozen=True, slots=True)
class CountedPhrase:
    """count: stitches after, None where it cannot be told. used: stitches of the row below."""

    count: int | None
    used: int | None
    problems: tuple[Problem, ...]


def count_phrase(text: str, before: int | None, craft: str = "", terms: str = "") -> CountedPhrase:
    """The count of one instruction; a phrase of several rows gives the count after the last."""
    pattern = parse_pattern(text, terms, craft or craft_of(text).value)
    ledger = Ledger(pattern, 0, "", 500)
    evens = Evens()
    if before is not None:
        ledger.below = plain_row(before)
    rows = [
        item for part in pattern.layout.parts for item in part.items if isinstance(item, WrittenRow)
    ]
    plain = WrittenRow(None, 0, len(pattern.source.text))
    for row in rows if len(rows) > 1 or (rows and rows[0].mark) else [plain]:
        add(ledger, row, None, evens)
    evens.finish(ledger)
    worked = [row for row in ledger.rows if row.count is not None]
    last = worked[-1] if worked else None
    return CountedPhrase(
        last.count if last else None, last.stitches_worked if last else None, tuple(ledger.problems)
    )
