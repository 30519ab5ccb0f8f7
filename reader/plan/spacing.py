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


def shaping_rows(rows: int, shapings: int) -> tuple[tuple[int, int], ...]:
    """(every how many rows, how often) for `shapings` changes over `rows` rows; () where they
    do not fit.

    A worked example: 140 rows and 36 shapings give every third row 4 times and every fourth row
    32 times.
    """
    if shapings < 1 or rows < shapings:
        return ()
    every, rest = divmod(rows, shapings)
    if not rest:
        return ((every, shapings),)
    return ((every, shapings - rest), (every + 1, rest))
