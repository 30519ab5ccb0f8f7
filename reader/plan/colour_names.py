"""Colours that are letters in, the names their yarns have on the list out."""

from __future__ import annotations

import re
from dataclasses import replace

from reader.plan.step import GatherItem, Notice, PlanPart

LETTER = re.compile(r"(?<=^Colour change ahead: )(?:[A-H]|MC|CC\d?)(?= comes)")
_NAME = r"(?P<name>[A-Z][\w'-]*(?: [A-Z][\w'-]*){0,2}|[a-z][a-z'-]{2,})"


def with_names(parts: tuple[PlanPart, ...], needed: tuple[GatherItem, ...]) -> tuple[PlanPart, ...]:
    """The parts with "Bracken, colour B, comes in two rows" for "B comes in two rows", where the
    list of yarns tells the name; a maker's balls bear names, not letters.
    """

    def told(notice: Notice) -> Notice:
        if notice.kind != "colour":
            return notice
        return replace(notice, text=LETTER.sub(lambda m: _called(m.group(), needed), notice.text))

    return tuple(
        replace(
            part,
            rows=tuple(
                replace(row, notices=tuple(told(one) for one in row.notices))
                if row.notices
                else row
                for row in part.rows
            ),
        )
        for part in parts
    )


def _called(letter: str, needed: tuple[GatherItem, ...]) -> str:
    name = name_of(letter, needed)
    return f"{name}, colour {letter}," if name else letter


def name_of(letter: str, needed: tuple[GatherItem, ...]) -> str:
    """The yarn's own name for a letter: Bracken for "2 balls in Bracken (B)" or "B: Bracken"; ""
    where none is told.
    """
    one = re.escape(letter)
    forms = (rf"{_NAME}\s*\(\s*(?:colou?r\s+)?{one}\s*\)", rf"(?<!\w){one}\s*[:=)]\s*{_NAME}")
    for item in needed:
        if item.kind != "yarn":
            continue
        found = next((m for form in forms if (m := re.search(form, item.text))), None)
        if found:
            return found["name"]
    return ""
