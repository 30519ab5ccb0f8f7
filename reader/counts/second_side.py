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
from reader.pattern.line_words import ACTION
from reader.pattern.second_half import COMPLETE
from reader.terms.stitches import Craft
from reader.text.sought import Sought

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

_STS = r"(?:sts?|stitches)\b"
REJOIN = Sought(
    ("join", "attach"),
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
RETURN = Sought(
    ("holder", "spare", "waste", "thread", "pin", "scrap"),
    r"\b(?:return(?:ing)?\s+to|go(?:ing)?\s+back\s+to|slip|place|put|take(?:\s+up)?|with|knit|work)\s+"
    rf"(?:the\s+|all\s+)*(?:(?:rem(?:aining)?|other|held)\s+)?(?:(?P<n>\d+)\s+)?{_STS}[^.;,]{{0,40}}?"
    r"\b(?:holders?|spare|waste|thread|pin|scrap)\b[^.;,]{0,40}"
    r"(?P<rest>(?:[.;,]\s*(?:with\s+[^.;,]*\bfacing,?\s*)?(?:re-?join|join|attach)\s+(?:the\s+)?(?:new\s+)?"
    r"(?:yarn|wool|cotton|thread)(?:(?!complete|finish)[^.;])*"
    r"|[.;,]\s*(?:cast|bind)\s+off\s[^.;]*)?)",
    re.IGNORECASE,
)
"""The stitches that waited, told by where they wait."""
TO_END = Sought(
    ("join", "attach"),
    r"\b(?:re-?join|join|attach)(?:ing)?\s+(?:the\s+)?(?:new\s+)?(?:yarn|wool|cotton|thread)\b"
    r"(?P<rest>(?:(?!pick|complete|finish)[^.;])*?\b(?:k|knit|p|purl|work|patt)\s"
    r"(?:(?!complete|finish)[^.;])*?\b(?:end|across)\b)(?P<n>(?!x)x)?",
    re.IGNORECASE,
)
"""Yarn joined where no stitch is on the needle, and a row worked to its end."""
DIVIDED = re.compile(
    r"\bturn\b(?:\W+leav|(?:[^.]|\.(?= [a-z,;]))*\b(?:leav|holder|spare|waste|pin|wait))"
    r"|\b(?:leav|holder|spare)(?:[^.]|\.(?= [a-z,;]))*\bturn\b"
    r"|^\W*(?:\w+\s+){0,3}?(?:k|knit|p|purl|work|patt)\s?\d[^.;]*\brem\w*\b[^.;]*\b(?:holder|spare|waste|pin)"
    r"|\bturn\b\W+(?:\w+\W+){0,5}(?:th(?:ese|ose) (?:last |first )?(?:sts|stitches)"
    r"|(?:set|group) of|first side|th(?:is|e first) (?:side|half|shoulder)|each side)\b",
    re.IGNORECASE,
)
ASIDE = re.compile(
    r"\b(?:place|put|slip|sl|leave|leaving)\b[^.;]*\b(?:holder|spare|thread|waste|pin)",
    re.IGNORECASE,
)
SHAPED = re.compile(
    r"[,;]\s*(?:and\s+|then\s+)*(?=(?:work|[kp]|knit|purl|sl|skpo|ssk|sk\w*|dec|inc|m)\b[^.;]*"
    r"\b(?:\d ?tog|tog|skpo|skp|ssk|psso|dec|inc|m1|make)\b)",
    re.IGNORECASE,
)
"""Behind the stitches taken up, a row that changes how many they are."""
WHY = "as on the first side"


def second_side(
    ledger: Ledger, row: WrittenRow, work: Callable[[WrittenRow], None]
) -> bool:
    """Works what a row's words tell of the second side, and what is written before and behind them;
    False, and nothing worked, where they tell of none, or no row has divided the work.
    """
    if ledger.pattern.craft is not Craft.KNITTING:
        return False
    text = ledger.text
    joined = _taken_up(ledger, row)
    again = COMPLETE.within(text, joined.end() if joined else row.start, row.end)
    # The rows before are gone through only for words that may go back to one of them.
    at = _divided(ledger) if joined or again else None
    if at is None:
        return False
    side = _first_side(ledger, at)
    if joined is not None and ledger.below.stitches in (None, 0):
        begun = row.start
        here = _left(ledger, at, text[begun : joined.start()], joined)
        if here is None:
            return False
        ledger.below = plain(here)
        shaped = SHAPED.search(joined["rest"])
        end = joined.start("rest") + shaped.start() if shaped else joined.end()
        ledger.even(here, row.mark, begun, end, "the stitches that waited")
        _beside(ledger, WrittenRow(None, end, row.end), work)
        return True
    if again is None or not side:
        return False
    first = replace(row, end=again.start())
    told = f", {text[first.start : first.end].lstrip(' ,;.')}"
    if ledger.below.stitches != side[0].before and not SHAPED.search(told):
        return False
    _beside(ledger, first, work)
    if ledger.below.stitches != side[0].before:
        work(WrittenRow(None, again.start(), row.end))
        return True
    for one in side:
        gain = (one.count or 0) - (one.before or 0)
        count = (ledger.below.stitches or 0) + gain
        measured = any("measure" in said for said in one.assumed)
        ledger.even(count, None, again.start(), again.end(), WHY, measured)
    return True


def _taken_up(ledger: Ledger, row: WrittenRow) -> re.Match[str] | None:
    """The words that take up the stitches of the second side."""
    ways = (REJOIN, TO_END, RETURN) if ledger.below.stitches == 0 else (REJOIN, RETURN)
    found = (way.within(ledger.text, row.start, row.end) for way in ways)
    return next((one for one in found if one is not None), None)


def _divided(ledger: Ledger) -> int | None:
    """The last row that left some stitches waiting and turned."""
    for at in range(len(ledger.rows) - 1, -1, -1):
        one = ledger.rows[at]
        fewer = one.before and one.count and one.count < one.before
        if fewer and (DIVIDED.search(one.written) or _one_waits(ledger, one)):
            return at
    return None


def _beside(ledger: Ledger, row: WrittenRow, work: Callable[[WrittenRow], None]) -> None:
    """Works what stands beside, or holds its total against what is on hand."""
    words = ledger.text[row.start : row.end]
    printed, rest = ledger.printed(words)
    if printed and ledger.rows and not re.search(r"\w", rest):
        ledger.check_total(row, 0, len(words))
    elif ACTION.search(words) or COMPLETE.search(words):
        work(row)


def _one_waits(ledger: Ledger, row: CountedRow) -> bool:
    """Whether a row put one lot of stitches aside, and nothing else waits."""
    return len(ledger.waiting) == 1 and ASIDE.search(row.written) is not None


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
    if not DIVIDED.search(row.written):
        waiting = ledger.waiting[0]
    slipped = SLIPPED.search(before) or SLIPPED.search(joined["rest"])
    told = int(joined["n"]) if joined["n"] else waiting - (int(slipped["n"]) if slipped else 0)
    off = OFF.search(joined["rest"])
    left = told - (int(off["n"]) if off else 0)
    return left if 0 < left <= waiting else None
