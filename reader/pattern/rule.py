"""Rule: what a row's words ask for by rule, in place of instructions."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Rule:
    """What a row's words ask for by rule.

    kind: "last" (the last `rows` rows again; 0: those told last), "rows" (rows first to last
    again), "same" (as row `first`), "even" (rows plain rows), "grow" (go on as the last rounds
    grew), "halve" (two together, over and over), "mirror" (the shaping before, turned about).
    times: how often more, None for open. goal: a stitch number to stop at.
    first: of rows that grow, the first that changes. paced: as the last change, of that sign (0: of
    either), in every how manieth row.
    in_all: the rows worked already are among the times.
    endless: a change at a pace, of which nothing says how often. unclear: a change is told of
    several rows, and not of which. as_before: so many rows (or until so many are worked) that go on
    as those before went.
    """

    kind: str
    first: int = 0
    last: int = 0
    rows: int = 1
    times: int | None = None
    goal: int | None = None
    start: int = 0
    end: int = 0
    rest: str = ""
    step: int = 0
    every: int = 1
    named: tuple[int, ...] = ()
    differs: bool = False
    measured: bool = False
    charted: bool = False
    total: int | None = None
    between: bool = False
    at_once: bool = False
    until_row: int | None = None
    by_gain: bool = False
    fewer: bool = False
    paced: bool = False
    per_section: bool = False
    sign: int = 0
    endless: bool = False
    in_all: bool = False
    unclear: bool = False
    as_before: bool = False
