"""Rows told by their fabric, or by ridges: "garter stitch", "work even on 24 dc", "knit 9
ridges".
"""

from __future__ import annotations

import re

from reader.pattern.changes import find_change
from reader.pattern.rule import Rule
from reader.pattern.rule_words import (
    BY_KIND,
    CHART,
    FABRIC,
    MEASURE,
    RIDGES,
    SPELLED_OUT,
    WORK_EVEN,
)


def ridges(words: str) -> Rule | None:
    """ "Knit 9 ridges": twice as many rows."""
    found = RIDGES.search(words) if "ridge" in words else None
    if found is None:
        return None
    rows = 2 * int(found["n"][:3])
    return Rule("even", rows=rows, start=found.start(), end=found.end(), rest=found.group())


def work_even(words: str) -> Rule | None:
    """ "Work even in meshes", "work even on 24 dc": every row of the label as the one before."""
    found = WORK_EVEN.match(words)
    if found is None or MEASURE.search(words) or find_change(words) is not None:
        return None
    goal = int(found["goal"][:4]) if found["goal"] else None
    return Rule("fabric", start=0, end=found.end(), rest=found.group(), goal=goal)


def in_fabric(words: str) -> Rule | None:
    """ "Garter stitch", "work in rib": every row of the label."""
    found = FABRIC.match(words)
    if found and not SPELLED_OUT.search(words):
        return Rule("fabric", start=0, end=found.end(), rest=words)
    kinds = [one for one in re.split(r",? and |[,;] ?", words.strip(" .")) if one]
    if len(kinds) > 1 and all(BY_KIND.fullmatch(one) for one in kinds):
        return Rule("fabric", start=0, end=len(words), rest=words)
    chart = CHART.match(words)
    if not chart:
        return None
    rows = max(1, int(chart.group(2)[:4]) - int(chart.group(1)[:4]) + 1)
    return Rule("even", rows=rows, start=0, end=chart.end(), rest=words, charted=True)
