"""Stitches and a number of changes in, how far apart the changes are out."""

from __future__ import annotations

from itertools import pairwise


def even_groups(stitches: int, changes: int) -> tuple[int, ...]:
    """Group sizes, one a change, that differ by at most one and spread the larger ones; they
    add up to `stitches`.

    For an increase work each group and make its last stitch twice; for a decrease work each
    group and
    put its last two together. () for fewer than one change or more changes than stitches.
    Source: plain arithmetic, floor((i + 1) n / k) - floor(i n / k).
    """
    if changes < 1 or stitches < changes:
        return ()
    marks = [i * stitches // changes for i in range(changes + 1)]
    return tuple(after - before for before, after in pairwise(marks))
