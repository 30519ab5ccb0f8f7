"""What a printed total of a pattern's own kind counts, learned from its first rows: "4 clusters",
"6 clusters" may be the threes of dc; a later row that holds another number of them is asked about.
"""

from __future__ import annotations

from dataclasses import dataclass

from reader.counts.counted import Problem, Verdict
from reader.counts.fabric import GAP, SPACE, Run, units_of
from reader.counts.faults import Where, quoted
from reader.counts.solved import Solved
from reader.pattern.totals import PLAIN_KINDS, STITCHES

LEAST_ROWS = 2
"""Rows of different totals that tell what is counted."""


@dataclass(frozen=True, slots=True)
class Learned:
    """What a kind of total may count, by name; and the totals that agreed."""

    may_be: frozenset[str]
    totals: frozenset[int]


def things_in(solved: Solved) -> dict[str, int]:
    """All that a row holds and that may be counted: groups by name, threes and more in one place,
    spaces in all and by their chains, stitches by kind.
    """
    runs = solved.tally.runs
    found = {f"groups {name}": number for name, number in units_of(runs).items()}
    found["bunches"] = _bunches(runs)
    found["spaces"] = solved.tally.spaces
    for run in runs:
        if run.name == SPACE:
            name = f"spaces of {run.chains}"
            found[name] = found.get(name, 0) + run.n
    for name, number in solved.tally.kinds.items():
        found[f"kind {name}"] = number
    return {name: number for name, number in found.items() if number}


def _bunches(runs: list[Run]) -> int:
    """Stitches that stand together in one place, each side of a space in it for itself."""
    many = 0
    for at, run in enumerate(runs):
        beside = runs[max(0, at - 1) : at + 2]
        shared = any(one.unit and one.name in (SPACE, GAP) for one in beside)
        many += run.is_stitch and run.n > 1 and (bool(run.unit) or shared)
    return many


def learn(
    learned: dict[str, Learned], solved: Solved, kind: str, stated: int | None, where: Where
) -> Problem | None:
    """Learns what such a total counts; a question where a row holds another number of it."""
    if stated is None or kind in STITCHES + PLAIN_KINDS or solved.count is None:
        return None
    things = things_in(solved)
    here = frozenset(name for name, number in things.items() if number == stated)
    before = learned.get(kind)
    if before is None:
        learned[kind] = Learned(here, frozenset([stated]))
        return None
    both = before.may_be & here
    if both or len(before.totals) < LEAST_ROWS or not before.may_be:
        learned[kind] = Learned(both, before.totals | {stated})
        return None
    if solved.tally.unread or solved.tally.unsure:
        return None
    return _other_number(min(things.get(name, 0) for name in before.may_be), kind, stated, where)


def _other_number(made: int, kind: str, stated: int, where: Where) -> Problem:
    said = (
        f"{where.label}: the printed total is {stated} {kind}; counted as in the rows before, the "
        f"words make {made}: {quoted(where.words)}. Please count them."
    )
    return Problem(Verdict.UNCLEAR, said, where.span, where.part, where.label, stated, made)
