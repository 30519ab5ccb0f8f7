"""A change in the last of the rows just told: "work 12 rows in rib, inc 8 sts evenly across last
row".
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

from reader.counts.fabric import plain
from reader.pattern.layout import WrittenRow
from reader.terms.numbers import SPELLED, word_number

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

_STS = r"(?:sts?|stitches)"
IN_LAST = re.compile(
    rf"[,;.]?\s*(?:and |at the same time |while )*(?P<way>inc|dec)\w*\.?\s+"
    rf"(?P<to>to\s+(?:have\s+)?)?(?P<n>\d+|{SPELLED})"
    rf"(?P<others>\s*[(\[][\d\s,;:/-]+[)\]])?\s*(?:{_STS}\s+)?(?:evenly\s+)?(?:spaced\s+)?"
    r"(?:(?:at|in|on)\s+(?:the\s+|(?P<both>each\s+|both\s+))?"
    r"(?:beg\w*\.?|start|ends?|middle|centre|center|sides?)\s+)?"
    r"(?:across|along|over|in|on|during|within|at|of)\s+(?:the\s+)?last\s+"
    r"(?:of these\s+)?(?:rib(?:bing)? |wrong side |right side |ws |rs )?"
    r"(?:row|rnd|round)\b(?:\s+of\s+(?:the\s+)?rib\w*)?",
    re.IGNORECASE,
)
"""Stitches gained or lost in the last row of those before it."""


def changed_in_last(ledger: Ledger, start: int, end: int) -> int:
    """How many characters of the words behind some rows tell of a change in the last of them, which
    is booked there; 0 where they tell of none. The words are those of the clean text.
    """
    found = IN_LAST.match(ledger.text, start, end)
    return found.end() - start if found and _booked(ledger, found) else 0


def changed_inside(ledger: Ledger, start: int, end: int) -> None:
    """Books such a change told inside the words of rows that a measure counts."""
    found = IN_LAST.search(ledger.text, start, end)
    if found:
        _booked(ledger, found)


def _booked(ledger: Ledger, found: re.Match[str]) -> bool:
    here = ledger.below.stitches
    if not ledger.rows or here is None:
        return False
    sides = 2 if found["both"] else 1
    way = 1 if found["way"].lower() == "inc" else -1
    number = _number(found, ledger.size)
    count = number if found["to"] else here + number * sides * way
    last = ledger.rows[-1]
    if count < 0 or last.count != here:
        return False
    words = " ".join(found.group().split()).strip(",;. ")
    assumed = (*last.assumed, f"this row, the last, has the change: {words}")
    ledger.rows[-1] = replace(last, count=count, assumed=assumed)
    ledger.below = plain(count, ledger.below.sections)
    return True


def only_in_last(ledger: Ledger, row: WrittenRow) -> bool:
    """Books a sentence that tells nothing but such a change, of the rows told before it; False, and
    nothing booked, for another.
    """
    found = IN_LAST.match(ledger.text, row.start, row.end)
    if row.mark is not None or found is None or not ledger.rows or ledger.rows[-1].stated:
        return False
    rest = ledger.text[found.end() : row.end]
    printed, behind = ledger.printed(rest)
    if re.search(r"\w", behind) or len(printed) > 1:
        return False
    if not changed_in_last(ledger, row.start, row.end):
        return False
    ledger.check_total(row, found.end() - row.start, row.end - row.start)
    return True


def _number(found: re.Match[str], size: int) -> int:
    told = [found["n"], *re.findall(r"\d+", found["others"] or "")]
    mine = told[min(size, len(told) - 1)]
    return int(mine[:4]) if mine.isdecimal() else word_number(mine) or 0
