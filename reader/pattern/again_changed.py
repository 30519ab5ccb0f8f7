"""A row called back with a change of its own, at a pace or to a number of stitches: "repeat row 3,
dec 1 st at each end of every row until 8 remain".
"""

from __future__ import annotations

import re

from reader.pattern.changes import change_once, pace_in
from reader.pattern.goals import goal_in, times_in
from reader.pattern.rule import Rule

_ROWS = r"(?:rows?|rnds?|rounds?)"
CALLED = re.compile(
    rf"\brep(?:eat)?(?:ing)?\s+(?:the\s+)?(?:(?:last|this|that|previous|same)\s+{_ROWS}|{_ROWS}\s*\d+)"
    r"\s*,?\s*(?:(?:but|and|while|at the same time)\s+)*"
    r"(?P<change>(?:inc|dec)\w*\.?\s[^.;]*?)"
    rf"(?P<far>,?\s*\b(?:(?:of|on|in)\s+)?(?:(?:every|each)\s+(?:\w+\s+)?{_ROWS}\b[^.;]*|(?:until|till)\b[^.;]*"
    rf"|(?:the\s+)?(?:next|foll\w*)\s+(?P<next>\d+)\s+{_ROWS}|for\s+(?P<for>\d+)\s+(?:more\s+)?{_ROWS}"
    r"|\d+\s+(?:more\s+)?times\b))",
    re.IGNORECASE,
)


def again_changed(words: str) -> Rule | None:
    """The rows that grow or narrow so; None where no change is told, or nothing says how far."""
    found = CALLED.search(words)
    step = change_once(found["change"], one_row=True)[0] if found else 0
    if found is None or not step:
        return None
    rows = found["next"] or found["for"]
    goal = goal_in(found["far"])
    times = int(rows[:3]) if rows else times_in(found["far"])
    if goal is None and times is None:
        return None
    return Rule(
        "grow", times=None if goal is not None else times, goal=goal, start=found.start(),
        end=found.end(), rest=found.group(), step=step, every=pace_in(found["far"]) or 1,
    )  # fmt: skip
