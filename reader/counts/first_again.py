"""Rounds that fill up the place where they began: "ch 3, 2 dc in same st, (...) around, 2 dc in
first st, join".
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from reader.counts.fabric import GAP, Run
from reader.pattern.tree import Act, Deed, Node, Repeat, Until, Where, Work

FILLED = "first place again"


def with_first_again(rest: Sequence[Node]) -> list[Node]:
    """The round whose last stitches go into its first place, which they use no second time."""
    joins = any(isinstance(one, Act) and one.deed is Deed.JOIN for one in rest)
    works = [at for at, one in enumerate(rest) if not isinstance(one, Act)]
    if not joins or len(works) < 3:
        return list(rest)
    first, last = rest[works[0]], rest[works[-1]]
    repeats = any(isinstance(one, Repeat) and one.until is Until.OPEN for one in rest)
    if not (_halves(first, last) and repeats and isinstance(last, Work)):
        return list(rest)
    same = replace(last, place=replace(last.place, where=Where.SAME, noun="st", text=FILLED))
    return [*rest[: works[-1]], same, *rest[works[-1] + 1 :]]


def _halves(first: Node, last: Node) -> bool:
    """Whether a round begins beside its chain, and ends with the same stitch in its first one."""
    if not (isinstance(first, Work) and isinstance(last, Work)) or first.stitch != last.stitch:
        return False
    if "sp" in (first.place.noun, last.place.noun) or last.number is None:
        return False
    return first.place.where is Where.SAME and last.place.where is Where.FIRST


def closed_round(rest: Sequence[Node], runs: list[Run], grouped: bool) -> list[Run]:
    """The runs of a row as they meet at its ends. grouped: its last group has a place of its own,
    so that a gap parts it from the first.
    """
    met = _met_in_first(rest, runs)
    stitches = bool(met) and met[0].is_stitch and met[-1].is_stitch
    return [*met, Run(GAP)] if grouped and stitches else met


def _met_in_first(rest: Sequence[Node], runs: list[Run]) -> list[Run]:
    """The runs of such a round with its last stitches before the first, as the group that they
    are; those of other rounds as they are.
    """
    works = [one for one in rest if isinstance(one, Work)]
    if not works or works[-1].place.text != FILLED or len(runs) < 3:
        return runs
    first, last = runs[0], runs[-1]
    if first.name != last.name or last.unit:
        return runs
    return [replace(first, n=first.n + last.n, unit="group"), *runs[1:-1]]
