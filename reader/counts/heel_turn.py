"""Heels turned by short rows that go on "until all the stitches are worked": each row takes one or
two of those that wait at its side, and one of them is knitted together with its neighbour.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import takewhile
from typing import TYPE_CHECKING

from reader.counts.counted import CountedRow
from reader.pattern.layout import WrittenRow

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

ALL_WORKED = re.compile(
    r"\b(?:until|till)\s+(?:you\s+have\s+)?(?:(?:worked|used|taken|knit\w*)\s+(?:up\s+|in\s+)?)?"
    r"(?:all|every one)\b(?!\s+but)[^.;]{0,60}?\b(?:sts?|stitches|them|been|are|is|have)\b",
    re.IGNORECASE,
)


def rest_of_heel(ledger: Ledger, words: str) -> list[int]:
    """The counts of the rows to come, up to that in which no stitch waits any more; [] where the
    words do not say so, or the rows before turn no heel.
    """
    if not ALL_WORKED.search(words):
        return []
    short = list(takewhile(_is_short, reversed(ledger.rows)))[::-1]
    return _rest(short) if len(short) > 2 else []


def heel_to_its_end(ledger: Ledger, span: WrittenRow, end: int) -> bool:
    """Books those rows, of words that end there; False where there are none."""
    counts = rest_of_heel(ledger, ledger.text[span.start : end])
    for count in counts:
        ledger.even(count, None, span.start, span.end, "until no stitch waits at the sides")
    return bool(counts)


def _is_short(one: CountedRow) -> bool:
    """Whether a row loses one stitch and is turned before its end, or comes just to it."""
    lost = one.before is not None and one.count == one.before - 1
    return lost and 2 < one.stitches_worked <= (one.before or 0)


TO_GAP = re.compile(r"\b(?:before|to|until) (?:the )?gap\b", re.IGNORECASE)
ONE_MORE = re.compile(r"\b(?:k|p|knit|purl) ?(?:1|one)\b[^a-z]*(?:and )?turn", re.IGNORECASE)
"""Behind the two together over the gap, another stitch of those that wait."""


def _rest(rows: Sequence[CountedRow]) -> list[int]:
    first, second, *more = (one.stitches_worked for one in rows)
    count = rows[-1].count or 0
    waits = [(rows[0].before or 0) - first, first - 1 - second]
    amid, each = second - 1, 0
    for at, worked in enumerate(more):
        words = rows[2 + at].written
        gap = TO_GAP.search(words)
        each = 1 + (ONE_MORE.search(words) is not None) if gap else worked - amid
        waits[at % 2] -= each
        amid += each - 1
    if each not in (1, 2) or min(waits) < 0:
        return []
    out: list[int] = []
    side = len(more) % 2
    while max(waits) > 0:
        if waits[side] > 0:
            waits[side] -= each
            count -= 1
            out.append(count)
        side = 1 - side
    return out
