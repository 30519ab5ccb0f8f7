"""Place: where the maker is, never a bare number."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True, order=True)
class Place:
    """A spot in a plan, ordered as it is worked.

    part: index into the plan's parts (each copy of a part is a part of its own in the plan).
    row: index into that part's rows (start, rows, remarks and finishing alike).
    step: index of the smallest step in that row (a stitch group); coarser reading starts at one
    and covers several.
    """

    part: int
    row: int
    step: int
