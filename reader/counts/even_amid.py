"""A label of many rows with two lots of words, "Rows 1 to 4: *k2, p2*, k2; on the even rows *p2,
k2*, p2" -> each of its rows with its own.
"""

from __future__ import annotations

import re
from dataclasses import replace

from reader.pattern.layout import WrittenRow
from reader.text.sought import Sought

AMID = Sought(
    ("even", "odd"),
    r"[;.,]\s*(?:(?:and|but)\s+)?(?:on|for|in)\s+(?:all\s+)?(?:the\s+)?(?P<which>even|odd)"
    r"(?:[- ]numbered)?\s+(?:rows|rounds|rnds|ones)\s*[,:]?\s+"
    r"(?=\*|[kp]\b|[kp]\s?\d|knit|purl|\(|\[|work\b)",
    re.IGNORECASE,
)


def rows_apart(text: str, row: WrittenRow) -> list[WrittenRow]:
    """The rows of such a label one by one; a row of another as the only one."""
    if row.mark is None or len(row.mark.numbers) < 2 or row.mark.by_size[0]:
        return [row]
    found = AMID.within(text, row.start, row.end)
    if found is None:
        return [row]
    others = found["which"].lower() == "odd"
    return [
        replace(
            row, mark=replace(row.mark, numbers=(number,)),
            start=found.end() if (number % 2 == 1) is others else row.start,
            end=row.end if (number % 2 == 1) is others else found.start() + 1,
        )
        for number in row.mark.numbers
    ]  # fmt: skip
