"""Whether a row may go around the edge of a piece that was turned, of which only the last row is
known.
"""

from __future__ import annotations

from collections.abc import Sequence

from reader.counts.counted import CountedRow
from reader.pattern.labels import Mark


def goes_around(mark: Mark | None, rows: Sequence[CountedRow]) -> bool:
    """Whether the next row is no row of the piece itself: it has no label, or is the first of
    rounds behind rows; one row among rounds is a slip of the label.
    """
    return mark is None or bool(mark.is_round and not any(row.is_round for row in rows[-2:]))
