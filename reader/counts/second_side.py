"""The second side of a neck: "rejoin yarn to rem 18 sts and k to end; complete to match first side"
-> the stitches that waited, and the rows of the first side once more.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace
from typing import TYPE_CHECKING

from reader.counts.counted import CountedRow
from reader.counts.fabric import plain
from reader.pattern.layout import WrittenRow
from reader.terms.stitches import Craft

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

_STS = r"(?:sts?|stitches)\b"
REJOIN = re.compile(
    r"\b(?:re-?join|join|attach)(?:ing)?\s+(?:the\s+)?(?:yarn|wool|cotton|thread)\b[^.;]{0,40}?"
    r"\b(?:rem(?:aining)?|other|held)\s+(?:(?P<n>\d+)\s+)?"
    rf"{_STS}(?P<rest>(?:(?!complete|finish)[^.;])*)",
    re.IGNORECASE,
)
SLIPPED = re.compile(
    r"\b(?:slip|sl|put|place|leave)\s+(?:the\s+)?(?:first|next|cent\w+|middle)\s+(?P<n>\d+)\s+"
    rf"{_STS}[^.;,]*\b(?:holder|pin|spare|thread|waste)",
    re.IGNORECASE,
)
OFF = re.compile(
    r"\b(?:cast|bind)\s+off\s+(?:the\s+)?(?:first|next|cent\w+|middle)?\s*(?P<n>\d+)", re.IGNORECASE
)
COMPLETE = re.compile(
    r"\b(?:complete|finish|work)\s+(?:(?:this|second|other)\s+side\s+)?"
    r"(?:to\s+(?:match|correspond\s+(?:to|with))|(?:the\s+)?same\s+as|as(?:\s+for)?|like)\s+(?:the\s+)?"
    r"(?:first|1st|other)\s+(?:side|half|shoulder|front)\b[^.;]*",
    re.IGNORECASE,
)
DIVIDED = re.compile(
    r"\bturn\b[^.]*\b(?:leav|holder|spare|waste|pin)|\b(?:leav|holder|spare)[^.]*\bturn\b",
    re.IGNORECASE,
)
WHY = "as on the first side"


def second_side(
    ledger: Ledger, row: WrittenRow, work: Callable[[WrittenRow], None]
) -> bool:
    """Works what a row's words tell of the second side, and what is written before and behind them;
    False, and nothing worked, where they tell of none, or no row has divided the work.
    """
    text, knits = ledger.text, ledger.pattern.craft is Craft.KNITTING
    at = _divided(ledger) if knits else None
    if at is None:
        return False
    side = _first_side(ledger, at)
    joined = REJOIN.search(text, row.start, row.end)
    again = COMPLETE.search(text, joined.end() if joined else row.start, row.end)
    if joined is not None and ledger.below.stitches in (None, 0):
        begun = row.start
        here = _left(ledger, at, text[begun : joined.start()], joined)
        if here is None:
            return False
        ledger.below = plain(here)
        ledger.even(here, row.mark, begun, joined.end(), "the stitches that waited")
        if text[joined.end() : row.end].strip(" .;,\n"):
            work(WrittenRow(None, joined.end(), row.end))
        return True
    if again is None or not side or ledger.below.stitches != side[0].before:
        return False
    if text[row.start : again.start()].strip(" .;,\n"):
        work(replace(row, end=again.start()))
    for one in side:
        gain = (one.count or 0) - (one.before or 0)
        count = (ledger.below.stitches or 0) + gain
        measured = any("measure" in said for said in one.assumed)
        ledger.even(count, None, again.start(), again.end(), WHY, measured)
    return True


def _divided(ledger: Ledger) -> int | None:
    """The last row that left some stitches waiting and turned."""
    for at in range(len(ledger.rows) - 1, -1, -1):
        one = ledger.rows[at]
        fewer = one.before and one.count and one.count < one.before
        if fewer and DIVIDED.search(one.written):
            return at
    return None


def _first_side(ledger: Ledger, at: int) -> list[CountedRow]:
    """The rows of the first side, up to the one that ends it; [] where one is not known."""
    rows = ledger.rows[at + 1 :]
    end = next((n for n, one in enumerate(rows) if one.count == 0), None)
    side = rows[: end + 1] if end is not None else []
    return side if all(one.count is not None and one.before for one in side) else []


def _left(ledger: Ledger, at: int, before: str, joined: re.Match[str]) -> int | None:
    """The stitches of the second side behind its first row."""
    row = ledger.rows[at]
    waiting = (row.before or 0) - (row.count or 0)
    slipped = SLIPPED.search(before)
    told = int(joined["n"]) if joined["n"] else waiting - (int(slipped["n"]) if slipped else 0)
    off = OFF.search(joined["rest"])
    left = told - (int(off["n"]) if off else 0)
    return left if 0 < left <= waiting else None
