"""How much of a piece before it another one is told by, "as back until armhole measures 10 cm",
"until 16 rows fewer than on back to shoulder" -> those rows.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from reader.counts.counted import CountedRow
from reader.counts.shaped_down import BINDS_OFF

THROUGH = re.compile(
    r"\b(?:including|completion|end|complete[ds]?|done|finished|worked)\b", re.IGNORECASE
)
ARMHOLE = re.compile(r"\b(?:armholes?|arm-holes?|underarms?)\b", re.IGNORECASE)
DEEP = re.compile(
    r"\barmholes?\s+measures?\b|\babove\b[^.;]*\b(?:arm|underarm)|\b(?:fewer|less|shorter|short)\b"
    r"[^.;]*\bthan\b",
    re.IGNORECASE,
)
"""A place above the armholes' shaping, where the piece goes on straight."""
ROWS_LESS = re.compile(
    r"\b(?P<n>\d{1,3})\s+rows?\s+(?:fewer|less|shorter|short)\b[^.;]*\bshoulder", re.IGNORECASE
)
SHAPES = re.compile(r"\b(?:dec|inc|narrow|widen|tog|k2|ssk|sk)", re.IGNORECASE)
"""Words of a change, so that a plain row of it is one between two changes."""
MEASURE = re.compile(
    r"\b(\d{1,3})(?:\s*[½¼¾⅓⅔⅛]|[ -]\d/\d)?\s*(?:\([^()]*\)\s*)?(?:inch|ins?\b|cm|\")",
    re.IGNORECASE,
)
"""How far a piece is worked."""
TO_ARMHOLE = re.compile(
    r"(?:up\s+)?(?:to|until|till)\s+(?:the\s+)?(?:(?:start|beg\w*)\s+of\s+(?:the\s+)?)?"
    r"(?:armholes?|underarms?)(?:\s+shapings?)?\W*$", re.IGNORECASE,
)
LEFT = re.compile(r"\b(\d{1,4})\s+(?:sts|stitches)\b", re.IGNORECASE)
STRAIGHT = 3
"""Plain rows that go straight on, where no measure tells it."""
AS_MEASURED = "as many rows as the measure takes, as in the piece that is quoted"


def measured(one: CountedRow) -> bool:
    """Whether a measure tells how many rows this stands for."""
    return any("measure" in said for said in one.assumed)


def even_from(rows: Sequence[CountedRow], first: int) -> int | None:
    """The first of the rows, from one on, where the piece goes straight on; None where it never
    does.
    """
    for at in range(first, len(rows)):
        if measured(rows[at]) and _plain(rows[at]):
            return at
        if len(rows) - at >= STRAIGHT and all(_plain(one) for one in rows[at : at + STRAIGHT]):
            return at
    return None


def rows_as_far(
    rows: Sequence[CountedRow], armhole: int | None, far: str, in_figures: str
) -> list[CountedRow] | None:
    """The rows up to the place that the words tell, through the armholes' shaping or beyond it;
    None where they tell of another.
    """
    if armhole is None:
        return None
    if TO_ARMHOLE.match(far):
        return list(rows[:armhole])
    left = LEFT.search(in_figures) if ARMHOLE.search(far) else None
    if left:
        here = (at for at in range(armhole, len(rows)) if rows[at].count == int(left[1]))
        return list(rows[: next(here, -1) + 1]) or None
    through = THROUGH.search(far) and ARMHOLE.search(far)
    even = even_from(rows, armhole)
    deep = DEEP.search(far) or _above(rows[:armhole], far)
    if even is None or not (through or deep):
        return None
    if not deep:
        return list(rows[:even])
    fewer = ROWS_LESS.search(in_figures)
    shoulder = next((at for at in range(even, len(rows)) if not _plain(rows[at])), len(rows))
    counted = not any(measured(one) for one in rows[even:shoulder])
    if fewer and counted and shoulder - int(fewer["n"]) >= even:
        return list(rows[: shoulder - int(fewer["n"])])
    straight = replace(rows[even], assumed=(*rows[even].assumed, AS_MEASURED))
    return [*rows[:even], straight]


def _plain(one: CountedRow) -> bool:
    """Whether a row changes nothing, nor belongs to a change that is told over rows."""
    shapes = not measured(one) and (BINDS_OFF.search(one.written) or SHAPES.search(one.written))
    return one.count == one.before and not shapes


def _above(rows: Sequence[CountedRow], far: str) -> bool:
    """Whether a measure that is told lies beyond the one that the rows were worked to."""
    found = MEASURE.search(far) if "measure" in far.lower() else None
    before = [MEASURE.search(one.written) for one in rows if measured(one)]
    last = next((one for one in reversed(before) if one), None)
    if found is None or last is None or found.group()[-1].lower() != last.group()[-1].lower():
        return False
    return int(found[1]) > int(last[1])


def first_change(rows: Sequence[CountedRow], sign: int) -> int | None:
    """The first row of a piece that gains or loses stitches, none of them cast on or bound off."""
    for at, one in enumerate(rows):
        gain = (one.count or 0) - (one.before or 0)
        if one.before and one.count and gain * sign > 0 and not BINDS_OFF.search(one.written):
            return at
    return None


def last_shaping(rows: Sequence[CountedRow]) -> int | None:
    """The first of the last rows that lose so many stitches at one pace, as raglans do."""
    shaped = [(at, one) for at, one in enumerate(rows) if not BINDS_OFF.search(one.written)]
    lost = {at: (one.before or 0) - (one.count or 0) for at, one in shaped}
    losing = [at for at, number in lost.items() if number > 0]
    if len(losing) < 2:
        return losing[0] if losing else None
    pace, first = losing[-1] - losing[-2], losing[-1]
    for at in losing[-2::-1]:
        if first - at != pace or lost[at] != lost[first]:
            break
        first = at
    return first
