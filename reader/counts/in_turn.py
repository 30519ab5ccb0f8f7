"""Totals told of several rows at once, one to each: "Rows 5-8: rep row 3. (30, 36, 42, 48 dc)"."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from reader.pattern.totals import Printed

_UNITS = (
    r"\s*(?:sts?|stitches|sc|s c|dc|d c|tr|htr|hdc|h d c)\b"
    r"(?: (?:in all|altogether|in total|total|made|now|on (?:the |each )?(?:row|rnd|round)))?"
    r"\s*[\])]?\.?(?=\s|$)"
)
_SAID = (
    r"(?:(?:you|we)(?:'ll| will| should| shall| must)?(?: now)? have(?: now)?(?: a total of)?\s+"
    r"|there (?:are|will be|should be|must be)(?: now)?\s+|(?:total|count|stitch count)(?: is| of)?"
    r"\s*:?\s+)?"
)
_BEFORE = rf"(?:[.;:)\s]*|\s*(?:,|—|-+|=|\.{{3}})\s*)[\[(]?\s*{_SAID}(?!\d*1st\b)\d+"
TOTAL_ALONE = re.compile(
    rf"{_BEFORE}(?:\s*[\[({{]\d+(?:\s*[,:;/-]\s*\d+)*[\])}}])?{_UNITS}", re.IGNORECASE
)
LIST_ALONE = re.compile(rf"{_BEFORE}(?:\s*(?:[,;/]|and\b)\s*\d+)*{_UNITS}", re.IGNORECASE)


def total_alone(words: str, sizes: int) -> re.Match[str] | None:
    """A sentence behind a rule that is only the total or, of one size, one for each of its rows."""
    return (TOTAL_ALONE if sizes > 1 else LIST_ALONE).match(words)


def in_turn(
    printed: Sequence[Printed], at: int, rows: int, sizes: int
) -> tuple[Printed, ...] | None:
    """The totals of the row `at` (0-based) of so many, None where no list gives one to each. In a
    pattern of several sizes a list is theirs.
    """
    if sizes > 1 or rows < 2 or not any(len(one.numbers) == rows for one in printed):
        return None
    return tuple(
        replace(one, numbers=(one.numbers[at],)) if len(one.numbers) == rows else one
        for one in printed
    )


def of_last(printed: Sequence[Printed], sizes: int) -> tuple[Printed, ...]:
    """The totals of the last of the rows that a rule works: behind it a list ends with that."""
    if sizes > 1:
        return tuple(printed)
    return tuple(replace(one, numbers=one.numbers[-1:]) for one in printed)
