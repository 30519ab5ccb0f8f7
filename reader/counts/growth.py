"""Rows that go on by rule ("in this way until there are 15") -> the counts they run through."""

from __future__ import annotations

from collections.abc import Sequence

from reader.pattern.rules import Rule

LONGEST = 400
"""Rows that one rule may open."""


def steps_of(counts: Sequence[int], rule: Rule) -> tuple[int, bool]:
    """Stitches gained (or lost) each time, and whether a plain row lies between; (0, False) when nothing grows."""
    if rule.step:
        return rule.step, rule.every > 1
    if len(counts) < 2:
        return 0, False
    step = counts[-1] - counts[-2]
    if step:
        return step, len(counts) > 2 and counts[-2] == counts[-3]
    return (counts[-1] - counts[-3], True) if len(counts) > 2 else (0, False)


def targets(rule: Rule, sections: int) -> list[int]:
    """Whole counts that a goal may stand for, the likeliest first: all stitches, or those of one section.

    "10 between increases" leaves the increase itself (two stitches) out of the section.
    """
    goal = rule.goal
    if rule.total is not None:
        return [rule.total]
    if goal is None:
        return []
    if sections < 2:
        return [goal]
    if rule.between:
        return [(goal + 2) * sections, (goal + 1) * sections, goal * sections, goal]
    return [goal, goal * sections, (goal + 1) * sections, (goal + 2) * sections]


def run_through(
    counts: Sequence[int], rule: Rule, sections: int, number: int, last: int | None
) -> list[int]:
    """The counts of the rows that the rule stands for, in order; [] where it does not say when to stop.

    number: the row just worked, 0 where rows have none. last: the last row's number where it is known.
    """
    step, slow = steps_of(counts, rule)
    count = counts[-1] if counts else 0
    if not step or not count:
        return []
    stop = next((one for one in targets(rule, sections) if reaches(count, step, one)), None)
    if rule.times is not None:
        return _rows(count, step, slow, counts, rule.times * (2 if slow else 1), None)
    if stop is None and (last is None or not number):
        return []
    most = last - number if stop is None and last is not None else LONGEST
    return _rows(count, step, slow, counts, most, stop)


def reaches(count: int, step: int, target: int) -> bool:
    """Whether equal steps lead from a count to a target."""
    way = target - count
    return way * step > 0 and way % step == 0 and way // step < LONGEST


def _rows(
    count: int, step: int, slow: bool, counts: Sequence[int], most: int, stop: int | None
) -> list[int]:
    out: list[int] = []
    plain_next = slow and len(counts) > 1 and counts[-1] != counts[-2]
    while len(out) < min(most, LONGEST) and count != stop and count + step > 0:
        if plain_next:
            out.append(count)
        else:
            count += step
            out.append(count)
        plain_next = slow and not plain_next
    return out
