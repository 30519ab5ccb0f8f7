"""Labels whose numbers go by size: "Rows 2-28 (32, 36):", "Rnds 5 (6, 7) to 8 (9, 10)."."""

from __future__ import annotations

import re

_MORE = r"\s*[\(\[](?P<{0}>\s*\d+(?:\s*[,:;/]\s*\d+)*)\s*[\)\]]"
SIZED_LABEL = re.compile(
    rf"(?<![\w-])(?:(?<![^\n ])[A-Z][a-z]{{2,10}} (?=r))?(?P<what>rounds?|rnds?|rds?|rows?"
    rf"|R(?=\s?\d))\.?\s*(?P<first>\d+)"
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

_ORD = r"\d+(?:st|nd|rd|th|d)\b"
_AND = r"\s*(?:-|—|to|through|thru|&|and|,|;|,\s*and)\s*"
ORDINALS_SIZED = re.compile(
    rf"(?<![\w-])(?P<own>{_ORD}(?:{_AND}{_ORD})*)(?P<goes_on>,?)\s*[\(\[]\s*"
    rf"(?P<more>{_ORD}(?:{_AND}{_ORD})*)\s*[\)\]]\s+(?P<what>rounds?|rnds?|rds?|rows?)\.?\s*[:.—]",
    re.IGNORECASE,
)
"""Ordinals for each size, "9th (11th) Rnd:", "10th-16th (12th through 18th) Rows:"; behind a comma
those of a bracket are worked in the larger size too: "5th, 6th, (7th, 8th) Rnds:".
"""


def _by_ordinals(found: re.Match[str]) -> tuple[tuple[int, ...], tuple[int, ...]]:
    """The first and the last number for each size."""
    (first, last), *_ = _runs(found["own"])
    more = _runs(found["more"])
    if found["goes_on"] and more[0][0] == last + 1:
        return (first, *(first for _ in more)), (last, *(end for _, end in more))
    firsts, lasts = (first, *(one for one, _ in more)), (last, *(end for _, end in more))
    if last == first:
        # One row a size: a list in the bracket has one number for each.
        singles = tuple(n for one, end in more for n in range(one, end + 1))
        return (first, *singles), ()
    return firsts, lasts


def _runs(said: str) -> list[tuple[int, int]]:
    """The stretches of numbers in a list: "5th, 6th, 7th" and "5th to 7th" are 5 to 7."""
    out: list[tuple[int, int]] = []
    for found in re.finditer(r"(-|—|to|through|thru)?\s*(\d{1,4})", said):
        number = int(found[2])
        if out and (found[1] or number == out[-1][1] + 1):
            out[-1] = out[-1][0], number
        else:
            out.append((number, number))
    return out


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
    ordinals = ORDINALS_SIZED.match(text, start)
    if ordinals is not None:
        return ordinals.end(), ordinals["what"], _by_ordinals(ordinals)
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
