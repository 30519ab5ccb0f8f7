"""A count that the text gives for every row, "the stitch count is 39 on every row": rows over that
many stitches are held against it.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

from reader.counts.counted import Problem, Verdict
from reader.counts.entries import Entry
from reader.counts.faults import Where, quoted
from reader.counts.solved import Solved
from reader.pattern.tree import Edge, Shape

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

_ROWS = r"(?:rows?|rnds?|rounds?)"
SENTENCE = re.compile(r"[^.;\n(\[]+")
CHANGES = re.compile(
    r"\b(?:inc|dec|bind|cast|add|more|fewer|less|work|pick|knit|purl)", re.IGNORECASE
)
SHAPES = (
    re.compile(
        rf"\b(?P<n>\d+) (?:sts?|stitches)\b.{{0,40}}\b(?:(?:on|in|for|at the end of|after) )?"
        rf"(?:every|each|all(?: the)?) (?:\w+ )?{_ROWS}\b",
        re.IGNORECASE,
    ),
    re.compile(
        r"\b(?:number of (?:sts|stitches)|(?<!in )total|count)\b[^,*;]{0,30}?(?:[:=]|\b(?:is|are"
        r"|stays?|remains?|will (?:be|stay|remain)|should (?:be|stay|remain)))(?: always"
        r"| constant(?:ly)?| the same)?(?: at)? (?P<n>\d+)\b",
        re.IGNORECASE,
    ),
    re.compile(
        rf"\b(?:every|each|all(?: the)?) {_ROWS} (?:has|have|holds?|will have) (?P<n>\d+)"
        r" (?:sts?|stitches)\b",
        re.IGNORECASE,
    ),
)
EVERY = re.compile(r"\b(?:every|each|all|throughout|always|stays?|remains?)\b", re.IGNORECASE)


def always_in(text: str) -> tuple[tuple[int, int], ...]:
    """Where the text says so, and the stitches of every row from there on."""
    found: list[tuple[int, int]] = []
    if not EVERY.search(text):
        return ()
    for sentence in SENTENCE.finditer(text):
        words = sentence.group()
        if not EVERY.search(words) or CHANGES.search(words):
            continue
        if text[sentence.start() - 1 : sentence.start()] in ("(", "["):
            # "[24 sts each round]": the total of a label's rounds.
            continue
        said = next((one for shape in SHAPES if (one := shape.search(words))), None)
        if said is not None:
            found.append((sentence.start(), int(said["n"][:5])))
    return tuple(found)


def always_of(ledger: Ledger, entry: Entry) -> int | None:
    """The count that the text gives for every row, where this row lies over just so many stitches
    and does not say that it changes them; None elsewhere.
    """
    once = ledger.pattern.book.once
    if ("always",) not in once:
        once["always",] = always_in(ledger.text)
    told: tuple[tuple[int, int], ...] = once["always",]
    before = [number for at, number in told if at < entry.row.start]
    labelled = entry.quoted or (entry.row.mark is not None and bool(entry.row.mark.numbers))
    if not before or ledger.below.stitches != before[-1] or not labelled:
        return None
    changes = any(isinstance(one, Shape | Edge) for one in entry.nodes)
    return None if changes or entry.printed else before[-1]


def held_to_it(
    ledger: Ledger, entry: Entry, solved: Solved, where: Where, problem: Problem | None
) -> Problem | None:
    """The problem of a row, gone on with the count of every row; a question where the words make
    another.
    """
    always = always_of(ledger, entry)
    if always is None or solved.count == always:
        return problem
    if problem is not None or solved.count is None:
        return replace(problem, counted=always) if problem is not None else None
    said = (
        f"{where.label}: every row is said to have {always} stitches; the words make "
        f"{solved.count}: {quoted(where.words)}. Please check them."
    )
    return Problem(Verdict.UNCLEAR, said, where.span, where.part, where.label, None, always)
