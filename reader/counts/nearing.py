"""How far the stitches on hand are from the number that a rule runs to."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from reader.counts.colour_goals import others_beside
from reader.counts.entries import Entry
from reader.counts.fabric import Below
from reader.pattern.rule import Rule

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger


def nearer(ledger: Ledger, entries: list[Entry], goal: int | None) -> bool:
    """Whether working the first of the rows again comes nearer to a goal."""
    count = ledger.solve(replace(entries[0], printed=(), quoted=True), None, "").count
    return count is not None and goal is not None and abs(goal - count) < distance(ledger, goal)


def whole_goal(ledger: Ledger, rule: Rule) -> int | None:
    """The stitches that a rule runs to, those of all sections where it names those of one."""
    if rule.goal is None or not rule.per_section:
        return rule.goal and rule.goal + others_beside(ledger, rule.rest)
    return rule.goal * max(1, sections_of(ledger.below))


def sections_of(below: Below) -> int:
    """Into how many sections a round is parted: as often as its repeat was worked, and the one
    before the repeat, where each ends in a space.
    """
    times, here = below.sections, below.stitches or 0
    begun = times > 1 and below.spaces == times + 1 and not here % (times + 1)
    return times + 1 if begun else times


def distance(ledger: Ledger, goal: int | None) -> int:
    """Stitches between what is on hand and a goal; a great number where either is unknown."""
    here = ledger.below.stitches
    return abs(here - goal) if here is not None and goal is not None else 10**6


def reached(ledger: Ledger, goal: int | None) -> bool:
    """Whether the stitches on hand are the goal, or can no longer become it."""
    here = ledger.below.stitches
    return here is None or goal is None or here == goal or here <= 0 or here > 5000
