"""A printed total that leaves out the chain its row begins with, where the rows before counted it:
"(12 dc)" with the chain, then "(23 dc)" where it makes twenty-four.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from reader.counts.counted import Problem, Verdict
from reader.counts.entries import Entry
from reader.counts.faults import Where, quoted
from reader.counts.solved import Solved
from reader.pattern.tree import Chain, Group, Repeat, Skip, Work
from reader.terms.stitches import Kind

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

LEAST = 3
"""Chains; a shorter one is a stitch too seldom for a total to tell."""


def chain_left_out(
    ledger: Ledger, entry: Entry, solved: Solved, where: Where, stated: int | None
) -> Problem | None:
    """A question, with both numbers; None where the words say what the chain is."""
    chain = first_chain(entry)
    if chain is None or chain.counts is not None or stated is None or stated != solved.count:
        return None
    height = chain.number.at(ledger.size)
    if solved.chained or height < LEAST or not ledger.held.get(height):
        return None
    counted = stated + 1
    said = (
        f"{where.label}: the printed total is {stated}, which leaves out the chain at its "
        f"beginning; the rows before counted it, and then there are {counted}: "
        f"{quoted(where.words)}. Please count this one."
    )
    return Problem(
        Verdict.UNCLEAR, said, where.span, where.part, where.label, stated, counted
    )


def first_chain(entry: Entry) -> Chain | None:
    """The chain that stands before everything that is worked, slip stitches apart."""
    for one in entry.nodes:
        if isinstance(one, Chain):
            return one
        slips = isinstance(one, Work) and one.stitch.kind is Kind.SLIP
        if isinstance(one, Work | Group | Repeat | Skip) and not slips:
            return None
    return None
