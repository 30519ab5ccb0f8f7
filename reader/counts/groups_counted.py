"""The groups of a row, where they, and not stitches, are what is counted."""

from __future__ import annotations

from collections.abc import Sequence

from reader.counts.agreeing import in_groups
from reader.counts.entries import Entry
from reader.counts.solved import Solved


def row_groups(
    solved: Solved,
    kind: str,
    stated: int | None,
    entry: Entry,
    units: Sequence[str],
    before: int | None,
) -> tuple[int | None, str]:
    """How many groups a row has, and their name; (None, "") where stitches are counted, also beside
    the groups. units: those of earlier totals; before: the groups of the row below.
    """
    if any(one.mixed for one in entry.printed):
        return None, ""
    return in_groups(solved, kind, stated, entry.unit, units, before)
