"""A row that is told once, for every so manieth row: "dec every 2nd round as follows: 1st needle,
knit to last 3 sts, ..., until 72 sts remain".
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace
from typing import TYPE_CHECKING

from reader.counts.growing import grow
from reader.counts.markers import at_each_marker
from reader.pattern.changes import pace_in
from reader.pattern.goals import goal_in
from reader.pattern.layout import WrittenRow
from reader.pattern.rule import Rule

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

TOLD_SO = re.compile(
    r"\W*(?:(?:then|now|and|next)\W+)*(?:dec|inc|narrow|widen|shap)\w*\.?\s+"
    r"(?P<when>(?:(?:on|in|at|for)\s+)?[^.;:,]{0,50}?(?:every|each|alt)\w*\b[^.;:,]{0,40}?"
    r"\b(?:rows?|rnds?|rounds?))"
    r"(?:\s*,?\s+(?:as\s+follows|thus|so|like\s+this|in\s+(?:this|the\s+following)\s+(?:way|manner)))\s*"
    r"[:.,—-]+\s+(?=\S)",
    re.IGNORECASE,
)
"""How such a row is announced."""
TAIL = re.compile(
    r"(?:[,;.]|(?<!\s))\s+(?:until|till)\s+(?:(?:there|you)\s+(?:are|have)\s+)?(?:only\s+)?\d[^.;]*(?:[.;]|$)",
    re.IGNORECASE,
)


def paced_row(ledger: Ledger, row: WrittenRow, work: Callable[[WrittenRow], None]) -> bool:
    """Works such a row, and those that follow it up to what its words end with; keeps its pace for
    what is said of it next. False, and nothing worked, for other words.
    """
    words = ledger.text[row.start : row.end]
    told = TOLD_SO.match(words)
    if told is None:
        return False
    when = (row.start + at for at in told.span("when"))
    every = pace_in(ledger.in_figures(*when))
    if every < 2:
        return False
    tail = TAIL.search(words, told.end())
    goal = goal_in(" ".join(tail.group().split())) if tail else None
    end = row.start + tail.start() if tail and goal is not None else row.end
    work(WrittenRow(row.mark, row.start + told.end(), end))
    ledger.pace = (len(ledger.rows), every)
    last = ledger.rows[-1]
    gain = (last.count or 0) - (last.before or 0)
    if goal is not None and tail is not None and gain:
        at, stop = tail.start(), tail.end()
        rule = Rule(
            "grow", goal=goal, start=at, end=stop, rest=tail.group(), step=gain, every=every
        )
        grow(ledger, replace(row, mark=None), rule, None)
    return True


def at_its_pace(ledger: Ledger, rule: Rule) -> Rule:
    """The rule at the pace of the row it goes on with, where its own words tell none; a change at
    each marker with as many as lie on the needle.
    """
    if ledger.markers and rule.kind == "grow" and not rule.step:
        step = ledger.markers * at_each_marker(rule.rest)
        if step:
            return replace(rule, step=step, paced=False)
    told, every = ledger.pace
    same = bool(told) and all(one.count == one.before for one in ledger.rows[told:])
    if not same or rule.kind != "grow" or rule.every > 1 or rule.step:
        return rule
    last = ledger.rows[told - 1]
    gain = (last.count or 0) - (last.before or 0)
    return replace(rule, every=every, step=gain) if gain else rule
