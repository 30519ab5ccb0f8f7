"""Rows that send the maker to another part in, the same with a word on where to hear it out."""

from __future__ import annotations

import re
from collections import Counter
from dataclasses import replace

from reader.plan.step import Notice, PlanPart, PlanRow, RowKind

AS_FOR = re.compile(
    r"\b(?:as|same as)\s+(?:given\s+)?(?:for\s+|on\s+)?(?:the\s+)?"
    r"(?P<name>[A-Za-z][A-Za-z ]{2,30}?)(?=\s+(?:until|to|up)\b|[.,;]|\s*$)",
    re.IGNORECASE,
)
"""Words that quote a whole part: "work as for Back until ...", "make same as left sleeve"."""


def with_elsewhere(parts: tuple[PlanPart, ...]) -> tuple[PlanPart, ...]:
    """The parts with a notice at each row that stands for rows of another part, unopened.

    Where the counting has opened such words into rows of their own, these are read and nothing is
    added.
    """
    names = {_plain(part.name): part.name for part in parts if part.name}
    return tuple(replace(part, rows=_told(part, names)) for part in parts)


def _told(part: PlanPart, names: dict[str, str]) -> tuple[PlanRow, ...]:
    often = Counter(row.written for row in part.rows)
    made: list[PlanRow] = []
    for row in part.rows:
        named = _named(row, names) if often[row.written] == 1 else ""
        if named and named != part.name:
            text = (
                f"The rows of the {named.lower()} are not read out here. "
                f"To hear them, say go to part, then {named.lower()}."
            )
            row = replace(row, notices=(Notice("elsewhere", text), *row.notices))
        made.append(row)
    return tuple(made)


def _named(row: PlanRow, names: dict[str, str]) -> str:
    """The part that a row quotes, "" for none."""
    if row.kind is RowKind.FINISH:
        return ""
    found = (names.get(_plain(one["name"]), "") for one in AS_FOR.finditer(row.written))
    return next((name for name in found if name), "")


def _plain(name: str) -> str:
    return " ".join(name.lower().removeprefix("the ").split()).removesuffix("s")
