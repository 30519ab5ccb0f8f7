"""The shaping of an earlier piece, worked down to another number of stitches: "shape raglan same as
back until 14 sts remain".
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from itertools import chain, repeat
from typing import TYPE_CHECKING

from reader.counts.counted import CountedRow

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

BINDS_OFF = re.compile(r"\b(?:bind|cast) off\b|\bbo\b", re.IGNORECASE)
MOST = 400
"""Rows that one shaping may take."""


def down_to(ledger: Ledger, rows: Sequence[CountedRow], left: int) -> list[CountedRow] | None:
    """The rows of a shaping, its last ones over and over, as far as so many stitches are left; None
    where they do not lead there. What is bound off first is left out where this piece has just
    bound off.
    """
    ledger.go_on(None)
    here, kept = ledger.below.stitches, list(rows)
    if ledger.rows and BINDS_OFF.search(ledger.rows[-1].written):
        while kept and BINDS_OFF.search(kept[0].written):
            kept = kept[1:]
    if kept and not kept[-1].count:
        # What is left is bound off at the end of that piece.
        kept = kept[:-1]
    if here is None or not kept:
        return None
    out: list[CountedRow] = []
    for one in _over_and_over(kept):
        if here == left or len(out) >= MOST:
            break
        if one.before is None or one.count is None:
            return None
        here += one.count - one.before
        out.append(one)
        if here < left:
            return None
    return out if here == left else None


def _over_and_over(rows: Sequence[CountedRow]) -> Iterator[CountedRow]:
    """The rows, and then their last pass without end: from the row behind the last but one that
    changes the count.
    """
    changing = [at for at, one in enumerate(rows) if one.count != one.before]
    last = rows[changing[-2] + 1 : changing[-1] + 1] if len(changing) > 1 else []
    return chain(rows, (one for _ in repeat(None) for one in last) if last else ())
