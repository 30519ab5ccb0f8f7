"""Rounds of a square that only say that its sides grow by a group, "the same again, with one more
group on each side" -> the round as it lies then.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

from reader.counts.by_label import called_by_label
from reader.counts.entries import numbers_of
from reader.counts.fabric import Below, Run, of_runs
from reader.pattern.layout import WrittenRow
from reader.text.sought import Sought

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

_GROUP = r"(?:(?:granny |3[ -]?[dt]\w+[ -])?(?:group|cluster|set|shell|block|bunch|trio|fan)s?)"
ONE_MORE = re.compile(
    rf"\b(?:(?:one|1|an|another|an extra|one extra|an additional) (?:more |extra |additional "
    rf"|further )?"
    rf"{_GROUP}|{_GROUP} more|by (?:one|1|a) {_GROUP}|adding an? {_GROUP})\b",
    re.IGNORECASE,
)
SIDE = Sought(
    ("side", "edge", "straight", "between"),
    r"\b(?:sides?|edges?|straights?|between (?:the )?corners|between each corner)\b",
    re.IGNORECASE,
)
LIST = re.compile(r"\*|\brep(?:eat)? from\b|\(\d")
"""Signs of a round that is written out."""
CORNERS = 3
"""Corners of a piece at least."""


def wider_square(ledger: Ledger, row: WrittenRow) -> bool:
    """Books such rounds; False (nothing booked) for other rows, and where the round below does not
    lie in groups with a chain in each corner.
    """
    if row.mark is None or not (row.mark.numbers or row.mark.name):
        return False
    words = ledger.text[row.start : row.end]
    if len(words) > MOST or not SIDE.search(words):
        return False
    if not ONE_MORE.search(words) or LIST.search(words):
        return False
    if _grown(ledger.below) is None:
        return False
    for number in numbers_of(row.mark):
        grown = _grown(ledger.below)
        if grown is None or ledger.full():
            return True
        why = "each side is taken to be one group longer"
        ledger.even(grown.stitches, row.mark, row.start, row.end, why)
        called_by_label(ledger, row.mark, number)
        ledger.below = grown
    ledger.check_total(row, 0, row.end - row.start, settled=False)
    return True


MOST = 220
"""Characters of such a round at most: a longer one is written out."""


def _grown(below: Below) -> Below | None:
    """The next round over one whose openings are corners and places between groups."""
    openings = [one for one in _single(below.runs) if not one.is_stitch]
    groups = [one for one in below.runs if one.is_stitch]
    chains = {one.chains for one in openings}
    if not groups or not chains or 0 in {max(chains)}:
        return None
    corners = [one for one in openings if one.chains == max(chains)]
    size, name = min(one.n for one in groups), groups[0].name
    if len(corners) < CORNERS or len(openings) % len(corners) or size < 2:
        return None
    between = [one for one in openings if one.chains < max(chains)]
    apart = between[0] if between else Run("gap")
    runs: list[Run] = []
    for one in openings:
        group = Run(name, size)
        runs += [group, one, group, apart] if one.chains == max(chains) else [group, apart]
    return of_runs(runs, size * (len(openings) + len(corners)), 0)


def _single(runs: tuple[Run, ...]) -> list[Run]:
    """The runs with every opening by itself."""
    return [
        single for one in runs
        for single in ([one] if one.is_stitch else [replace(one, n=1)] * one.n)
    ]  # fmt: skip


