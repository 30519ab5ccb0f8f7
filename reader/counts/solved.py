"""Solved: a row as worked under one reading."""

from __future__ import annotations

from dataclasses import dataclass

from reader.counts.tally import Choice, Tally


@dataclass(frozen=True, slots=True)
class Solved:
    """A row as worked under one reading. count None: cannot be told. fits: None where the row below
    is unknown.
    """

    count: int | None
    fits: bool | None
    left: int
    choice: Choice
    tally: Tally
    chained: bool = False
    next_chain: int = 0

    @property
    def short(self) -> int:
        """Stitches asked for that the row below does not have."""
        return self.tally.walk.short
