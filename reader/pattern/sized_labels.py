"""Labels whose numbers go by size: "Rows 2-28 (32, 36):", "Rnds 5 (6, 7) to 8 (9, 10)."."""

from __future__ import annotations

import re

_MORE = r"\s*[\(\[](?P<{0}>\s*\d+(?:\s*[,:;/]\s*\d+)*)\s*[\)\]]"
SIZED_LABEL = re.compile(
    rf"(?<![\w-])(?P<what>rounds?|rnds?|rds?|rows?|R(?=\s?\d))\.?\s*(?P<first>\d+)"
    rf"(?:{_MORE.format('firsts')})?"
    rf"(?:\s*(?:-|—|to|through|thru)\s*(?P<last>\d+)(?:{_MORE.format('lasts')})?)?\s*[:.—]",
    re.IGNORECASE,
)


RANGES = re.compile(
    r"(?<![\w-])(?P<what>rounds?|rnds?|rds?|rows?|R(?=\s?\d))\.?\s*(?P<first>\d+)\s*(?:-|—|to)\s*"
    r"(?P<last>\d+)\s*[\(\[](?P<more>\s*\d+\s*(?:-|—|to)\s*\d+"
    r"(?:\s*[,:;/]\s*\d+\s*(?:-|—|to)\s*\d+)*)\s*[\)\]]\s*[:.—]",
    re.IGNORECASE,
)
"""A range for each size: "Rnds 6-11 (7-13, 8-15):"."""


def sized_label(
    text: str, start: int
) -> tuple[int, str, tuple[tuple[int, ...], tuple[int, ...]]] | None:
    """Where such a label that begins at `start` ends, the word for its rows, and the first and the
    last number for each size (one alone where it is the same in all); None where none begins.
    """
    ranges = RANGES.match(text, start)
    if ranges is not None:
        more = _numbers(ranges["more"])
        firsts, lasts = (int(ranges["first"]), *more[::2]), (int(ranges["last"]), *more[1::2])
        return ranges.end(), ranges["what"], (firsts, lasts)
    found = SIZED_LABEL.match(text, start)
    if found is None or not (found["firsts"] or found["lasts"]):
        return None
    if found["firsts"] and not found["last"] and len(_numbers(found["firsts"])) < 2:
        # "Row 5 (24):" may hold a total.
        return None
    firsts = (int(found["first"]), *_numbers(found["firsts"]))
    lasts = (int(found["last"]), *_numbers(found["lasts"])) if found["last"] else ()
    return found.end(), found["what"], (firsts, lasts)


def _numbers(said: str | None) -> tuple[int, ...]:
    return tuple(int(one) for one in re.findall(r"\d{1,4}", said or ""))
