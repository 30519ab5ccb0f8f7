"""Rows that one line asks for together in, each as one row out: "knit 10 rounds" is ten rounds."""

from __future__ import annotations

import re
from dataclasses import replace
from itertools import groupby

from reader.counts.counted import CountedRow
from reader.plan.step import Notice, PlanRow, RowKind

_MANY = re.compile(
    r"\b(?:each of\s+)?(?:(?:the\s+)?(?:next|following)\s+)?"
    r"(?:\d{1,3}|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)\s+(?:more\s+)?"
    r"(?P<noun>row|round|rnd)s\b",
    re.IGNORECASE,
)
"""Words that ask for several rows: "10 rounds", "the next 2 rows"."""
_ONE = re.compile(r"\bthis (?:row|round)\b")


def one_at_a_time(rows: tuple[CountedRow, ...]) -> tuple[CountedRow, ...]:
    """The rows with "this round" where the line they come from says "10 rounds".

    Read as it stands at each of ten rounds it would be knitted a hundred times. The written words
    of the row stay as they are.
    """
    made: list[CountedRow] = []
    for written, stretch in groupby(rows, key=lambda row: row.written):
        same = tuple(stretch)
        asked = len(same) > 1 and _MANY.search(written)
        made += (_singled(row) for row in same) if asked else same
    return tuple(made)


def _singled(row: CountedRow) -> CountedRow:
    # A row has few words and may have thousands of moves: each are looked through once.
    single = {
        words: _MANY.sub(_this, words) for move in row.moves for words in {move.words, move.said}
    }
    if all(words == one for words, one in single.items()):
        return row
    moves = tuple(
        move._replace(words=single[move.words], said=single[move.said]) for move in row.moves
    )
    return replace(row, moves=moves)


def _this(found: re.Match[str]) -> str:
    return "this row" if found["noun"].lower() == "row" else "this round"


def alike_told(rows: tuple[PlanRow, ...], worked: list[int]) -> list[tuple[int, Notice]]:
    """At the first of them, how many rows alike follow."""
    found: list[tuple[int, Notice]] = []
    for written, stretch in groupby(worked, key=lambda index: rows[index].written):
        same = list(stretch)
        if len(same) < 2 or not _MANY.search(written) or rows[same[0]].kind is not RowKind.WORK:
            continue
        said = rows[same[0]].groups[0].written
        if _ONE.search(said) and all(rows[at].groups[0].written == said for at in same[1:]):
            noun = "rounds" if rows[same[0]].is_round else "rows"
            found.append((same[0], Notice("alike", f"The next {len(same)} {noun} are alike.", 0)))
    return found
