"""Rows told together apart from those between which they lie: "Rnds 2, 4 and 6: knit" behind round
7 or before round 1, "All even rounds: knit" behind the odd ones, set where they are worked.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from reader.counts.evens import PARITIES
from reader.pattern.layout import WrittenNote, WrittenRow

Item = WrittenRow | WrittenNote


def in_their_place(items: Sequence[Item]) -> list[Item]:
    """The rows of a part, those told together put behind the row before the first of them."""
    out = list(items)
    for one in items:
        # Where a row stands is looked for through all of them, so only where it may be moved.
        if isinstance(one, WrittenRow) and _names_several(one):
            at = _place(out, out.index(one), one)
            if at is not None:
                out.remove(one)
                out.insert(at, one)
    return out


def _names_several(row: WrittenRow) -> bool:
    """Whether a row's label is of more rows than one."""
    return row.mark is not None and (len(row.mark.numbers) > 1 or bool(row.mark.every_other))


def _place(items: list[Item], at: int, row: WrittenRow) -> int | None:
    """Where such a row belongs among the others without it; None where it stands rightly."""
    if row.mark is None:
        return None
    numbers = row.mark.numbers
    if len(numbers) > 1 and all(b - a > 1 for a, b in pairwise(numbers)):
        return _behind(items, at, numbers) or _ahead(items, at, numbers)
    if not numbers and row.mark.every_other:
        return _among(items, at, PARITIES.get(row.mark.every_other))
    return None


def _behind(items: list[Item], at: int, numbers: tuple[int, ...]) -> int | None:
    """The place where such rows were told behind one that comes later."""
    run = _run_before(items, at)
    if not run or run[-1][1][-1] < numbers[0] or _named(run) & set(numbers):
        return None
    if numbers[0] - 1 not in {one[1][-1] for one in run}:
        return run[0][0] if numbers[0] == 1 < run[0][1][0] else None
    return next(place for place, many in run if many[0] > numbers[0])


def _ahead(items: list[Item], at: int, numbers: tuple[int, ...]) -> int | None:
    """The place where such rows were told before the one that they follow."""
    for place in range(at + 1, len(items)):
        one = items[place]
        if isinstance(one, WrittenRow):
            many = one.mark.numbers if one.mark is not None else ()
            if not many or many[0] >= numbers[0]:
                return None
            if many[-1] == numbers[0] - 1:
                return place
    return None


def _among(items: list[Item], at: int, parity: int | None) -> int | None:
    """The place where every other row was told behind rows with gaps: before all of them."""
    run = _run_before(items, at)
    if len(run) < 2:
        return None
    told = sorted(_named(run))
    gaps = all(b - a == 2 for a, b in pairwise(told)) and len(told) == len(run)
    return run[0][0] if gaps and (parity is None or told[0] % 2 != parity) else None


def _run_before(items: list[Item], at: int) -> list[tuple[int, tuple[int, ...]]]:
    """The rows with numbers that mount up to a place: where each stands, and its numbers."""
    run = list[tuple[int, tuple[int, ...]]]()
    for place in range(at - 1, -1, -1):
        one = items[place]
        if isinstance(one, WrittenNote):
            continue
        many = one.mark.numbers if one.mark is not None else ()
        if not many or (run and many[0] >= run[0][1][0]):
            break
        run.insert(0, (place, many))
    return run


def _named(run: list[tuple[int, tuple[int, ...]]]) -> set[int]:
    return {number for _, many in run for number in many}
