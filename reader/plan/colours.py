"""Rows in, the same rows with the colour each begins with out, where the words tell one."""

from __future__ import annotations

import re
from dataclasses import replace

from reader.plan.step import PlanRow, RowKind

NAMES = (
    "red|white|blue|green|yellow|grey|gray|black|brown|pink|orange|purple|cream|navy|gold|silver|beige|"
    "ecru|rose|lilac|teal|turquoise|maroon|tan|ivory"
)
CHANGE = re.compile(
    r"\b(?:change to|changing to|switch to|join(?:ing)?|attach|with|using|in|pick up)\s+"
    r"(?:(?:the|yarn|colou?r)\s+)*"
    rf"(?P<name>(?-i:[A-H]|MC|CC\d?)(?![\w'-])|(?:(?:dark|light|pale|bright|"
    rf"(?-i:[A-Z][a-z]+\.?)) )?(?:{NAMES})\b)",
    re.IGNORECASE,
)
LEADING = 24
"""Characters within which a colour named in a row is the one it begins with."""


def with_colours(rows: tuple[PlanRow, ...]) -> tuple[PlanRow, ...]:
    """Each worked row with its colour, kept from row to row until the words name another; ""
    before any.

    A colour named late in a row is the next row's.
    """
    made: list[PlanRow] = []
    now = ""
    for row in rows:
        found = list(CHANGE.finditer(row.written))
        if row.kind is not RowKind.WORK:
            now = found[-1]["name"] if found else now
            made.append(row)
            continue
        begins = found[0]["name"] if found and found[0].start() <= LEADING else now
        colour = row.colour or begins
        made.append(row if colour == row.colour else replace(row, colour=colour))
        now = found[-1]["name"] if found else colour
    return tuple(made)
