"""Pieces that are made twice in all their parts: socks, mitts, slippers."""

from __future__ import annotations

import re
from dataclasses import replace

from reader.counts.counted import CountedPattern, Remark
from reader.plan.step import PlanPart, PlanRow

_THING = r"(?:sock|stocking|mitten|mitt|glove|slipper|bootie|boot|shoe|warmer|one|piece)"
_SECOND = re.compile(
    rf"(?:make|work|knit|crochet)\s+(?:(?:a|the)\s+)?(?:second|other|another)\s+{_THING}\b.{{0,40}}"
    rf"|(?:make|work|knit|crochet)\s+(?:the\s+)?{_THING}s?\s+(?:2|two|twice)\b.{{0,20}}"
    rf"|(?:the\s+)?(?:second|other)\s+{_THING}\b.{{0,20}}"
    r"\b(?:same|alike|as (?:the )?first)\b.{0,20}"
    r"|(?:make|work|knit|crochet)\s+(?:2|two|a pair)(?:\s+alike)?"
    r"|(?:make|work|knit|crochet)\s+another(?:\s+(?:the same|alike|to match))?",
    re.IGNORECASE,
)
"""A sentence that asks for the whole piece a second time."""


def pair_wanted(counted: CountedPattern) -> bool:
    """Whether the whole piece is asked for twice; parts that are made several times each say how
    often themselves.
    """
    return _asked(counted) is not None and all(part.make == 1 for part in counted.parts)


def _asked(counted: CountedPattern) -> Remark | None:
    last = counted.parts[-1].notes if counted.parts else ()
    whole = (*counted.notes, *last, *counted.finishing)
    return next((one for one in whole if _SECOND.fullmatch(one.text.strip(" ().!*"))), None)


def with_finishing_of_each(counted: CountedPattern) -> CountedPattern:
    """The pattern of a pair with the finishing that stands before the words for the second one at
    the end of its last part, since each of the two has it.
    """
    asked = _asked(counted)
    if asked is None or not counted.parts or not pair_wanted(counted):
        return counted
    each = tuple(one for one in counted.finishing if one.span.start < asked.span.start)
    last = counted.parts[-1]
    notes = (*last.notes, *(replace(one, before_row=None) for one in each))
    notes = tuple(sorted(notes, key=lambda one: one.span.start))
    left = tuple(one for one in counted.finishing if one not in each)
    parts = (*counted.parts[:-1], replace(last, notes=notes))
    return replace(counted, parts=parts, finishing=left)


def paired(first: list[PlanPart], second: list[PlanPart]) -> list[PlanPart]:
    """The parts of one and then those of the other, each of these worked as the first; the words
    for the second one stand at the end of the first only.
    """
    ones = [replace(part, copy=1, copies=2) for part in first]
    others = [
        replace(part, copy=2, copies=2, first=index, rows=_without_asking(part.rows))
        for index, part in enumerate(second)
    ]
    return [*ones, *others]


def _without_asking(rows: tuple[PlanRow, ...]) -> tuple[PlanRow, ...]:
    asks = len(rows) > 1 and _SECOND.fullmatch(rows[-1].written.strip(" ().!*"))
    return rows[:-1] if asks else rows
