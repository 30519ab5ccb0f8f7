"""Rows that go on by rule ("in this way until there are 15") -> the counts they run through."""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import pairwise

from reader.pattern.rule import Rule

EVERY_ONE = re.compile(
    r"\b(?:on |in )?(?:each|every) (?:single )?(?:row|rnd|round)\b(?! (?:\d|other))", re.IGNORECASE
)
"""No plain rows between, though the rows before had them."""
LONGEST = 400
"""Rows that one rule may open."""


def steps_of(counts: Sequence[int], rule: Rule, sections: int = 0) -> tuple[int, int]:
    """Stitches gained (or lost) each time, and in every how manieth row; (0, 1) when nothing grows.
    """
    by_section = sections > 1 and rule.goal is not None and (rule.between or rule.per_section)
    if rule.step and not (by_section and len(counts) > 1):
        return rule.step, rule.every
    if len(counts) < 2:
        return 0, 1
    called = rule.rows > 2 and not rule.paced and len(counts) > rule.rows
    if called and counts[-1] != counts[-1 - rule.rows]:
        # So many rows called back, one of which changes.
        return counts[-1] - counts[-1 - rule.rows], rule.rows
    step = counts[-1] - counts[-2]
    if rule.goal is not None and not step and EVERY_ONE.search(rule.rest):
        return next((b - a for a, b in pairwise(counts[::-1]) if a != b), 0) * -1, 1
    if rule.paced:
        changed = [b - a for a, b in pairwise(counts) if a != b and (b - a) * rule.sign >= 0]
        return (changed[-1] if changed else 0), rule.every
    if step:
        return step, 2 if len(counts) > 2 and counts[-2] == counts[-3] else 1
    return (counts[-1] - counts[-3], 2) if len(counts) > 2 else (0, 1)


MADE = re.compile(r"\b(?:made|make|making|overs?|holes?)\b", re.IGNORECASE)
"""An increase that is one new stitch, and not two in an old one."""


def targets(rule: Rule, sections: int) -> list[int]:
    """Whole counts that a goal may stand for, the likeliest first: all stitches, or those of one
    section.

    "10 between increases" leaves the increase itself (two stitches) out of the section.
    """
    goal = rule.goal
    if rule.total is not None:
        return [rule.total]
    if goal is None:
        return []
    if sections < 2:
        return [] if rule.per_section else [goal]
    if rule.between and MADE.search(rule.rest):
        return [(goal + 1) * sections, goal * sections, goal]
    if rule.between:
        return [(goal + 2) * sections, (goal + 1) * sections, goal * sections, goal]
    if rule.per_section:
        return [goal * sections, (goal + 1) * sections, (goal + 2) * sections]
    return [goal, goal * sections, (goal + 1) * sections, (goal + 2) * sections]


def run_through(
    counts: Sequence[int], rule: Rule, sections: int, number: int, last: int | None
) -> list[int]:
    """The counts of the rows that the rule stands for, in order; [] where it does not say when to
    stop.

    number: the row just worked, 0 where rows have none. last: the last row's number where it is
    known.
    """
    step, every = steps_of(counts, rule, sections)
    count = counts[-1] if counts else 0
    if not step or not count:
        return []
    rest = _plain_before(counts, rule, every)
    stops = [one for one in targets(rule, sections) if reaches(count, step, one)]
    if rule.goal is not None and step > 0 and reaches(count, step, rule.goal):
        # More than there are in all now is no number of one section.
        stops = [rule.goal]
    if last is not None and number:
        # The next label tells how many rows there are: the goal that they lead to is meant.
        stops.sort(key=lambda one: rest + (one - count) // step * every != last - number)
    stop = stops[0] if stops else None
    if rule.times is not None:
        changes = rule.times
        return _rows(count, step, every, rest, LONGEST, count + step * changes)
    if stop is None and (last is None or not number):
        return []
    most = last - number if stop is None and last is not None else LONGEST
    return _rows(count, step, every, rest, most, stop)


def _plain_before(counts: Sequence[int], rule: Rule, every: int) -> int:
    """Plain rows before the first change: none where the change comes at once or a plain row was
    just worked.
    """
    if every < 2 or rule.at_once:
        return 0
    if rule.first:
        return rule.first - 1
    worked = 0
    while worked + 1 < len(counts) and counts[-1 - worked] == counts[-2 - worked]:
        worked += 1
    return max(0, every - 1 - worked)


def reaches(count: int, step: int, target: int) -> bool:
    """Whether equal steps lead from a count to a target."""
    way = target - count
    return way * step > 0 and way % step == 0 and way // step < LONGEST


def _rows(count: int, step: int, every: int, rest: int, most: int, stop: int | None) -> list[int]:
    out: list[int] = []
    least = 0 if stop == 0 else 1
    while len(out) < min(most, LONGEST) and count != stop and count + step >= least:
        if rest:
            rest -= 1
        else:
            count += step
            rest = every - 1
        out.append(count)
    return out
