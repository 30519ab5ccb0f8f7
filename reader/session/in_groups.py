"""A count told in groups: "eleven", where a row ends with eleven V-stitches."""

from __future__ import annotations

from reader.plan import find
from reader.plan.place import Place
from reader.plan.step import PlanRow, RowKind
from reader.session.state import State

NEAR = 3
"""Groups to each side of the right number that are still a count of groups."""


def meant_in_groups(state: State, number: int, under: Place | None) -> Place | None:
    """The row whose groups a number counts: the present one, or the one below it (under) that was
    just completed; None where it is a count of stitches.
    """
    places = [one for one in (under, state.place) if one is not None]
    rows = [find.row_at(state.plan, one) for one in places]
    if any(number in (row.count, row.count_before) for row in rows):
        return None
    near = [(off, at) for at, row in enumerate(rows) if (off := _off(row, number)) is not None]
    return places[min(near)[1]] if near else None


def _off(row: PlanRow, number: int) -> int | None:
    """How many groups a number is off; None where it is nearer to the stitches, or to neither."""
    if row.kind is not RowKind.WORK or row.groups_made is None or row.count is None:
        return None
    off = abs(number - row.groups_made)
    return off if off <= min(NEAR, abs(number - row.count) - 1) else None
