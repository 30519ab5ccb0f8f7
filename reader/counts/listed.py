"""Lists of numbers for sizes that the pattern does not have: "15-17-19 times" where only one size
is known. Which of them is meant nothing tells, so no count is given.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

from reader.counts.counted import Problem, Verdict
from reader.counts.fabric import Below
from reader.counts.faults import quoted
from reader.pattern.figures import tightened
from reader.terms.stitches import Craft

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger
    from reader.pattern.layout import WrittenRow

_COUNTED = r"\s*(?:more\s+)?(?:sts?|stitches|times|rows|rounds|rnds)\b"
LIST = re.compile(
    r"(?<![\d.:/-])(?:\d+(?:\s?[-/—]\s?\d+){2,}|\d+(?:,\s\d+){2,}"
    rf"|\d+\s?[(\[]\s?\d+(?:\s?[,:;-]\s?\d+)+\s?[)\]]){_COUNTED}",
    re.IGNORECASE,
)
"""Several numbers of one thing that is counted; a range "2-3 times" is none."""
NAMES_ROWS = re.compile(
    r"(?<!st )(?<!nd )(?<!rd )(?<!th )(?<!other )(?<!alt )(?<!alternate )"
    r"\b(?:rows?|rnds?|rounds?|ridges?)\s*$",
    re.IGNORECASE,
)


def unresolved(words: str, size: int, sizes: int) -> str:
    """The first list of the words that has not one number for each size; "" where none has."""
    told = tightened(words, size, sizes)
    for found in LIST.finditer(told):
        if not NAMES_ROWS.search(told[: found.start()]):
            return found.group()
    return ""


def ask_of_list(ledger: Ledger, row: WrittenRow, first: int) -> None:
    """Asks about a list in a row just worked, whose rows begin at index `first`; their counts are
    left open, but for printed totals.
    """
    if ledger.pattern.craft is not Craft.KNITTING:
        return
    sizes = len(ledger.pattern.sizes)
    said = unresolved(ledger.text[row.start : row.end], ledger.size, sizes)
    done = ledger.rows[first:]
    if not said or not done or done[-1].stated is not None:
        return
    label, words = done[-1].label, quoted(ledger.words(row.start, row.end))
    known = "one size" if sizes == 1 else f"{sizes} sizes"
    message = (
        f"{label}: “{' '.join(said.split())}” gives a number for each of several sizes, but the "
        f"pattern is read as one of {known}, so how many stitches there are is not known: {words}. "
        "Please count them."
    )
    span = ledger.span(row.start, row.end)
    asked = ledger.problems[-1].span if ledger.problems else None
    if asked is None or asked.end < span.start:
        ledger.problems.append(Problem(Verdict.UNCLEAR, message, span, ledger.part, label))
    ledger.rows[first:] = [replace(one, count=None, before=None) for one in done]
    ledger.below, ledger.doubted = Below(), True
