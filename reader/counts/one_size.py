"""What of a part is worked in one size: rows for other sizes left out, labels with the size's
numbers.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from reader.pattern.labels import Mark
from reader.pattern.layout import WrittenNote, WrittenRow


def rows_for(
    items: Sequence[WrittenRow | WrittenNote], size: int, sizes: int
) -> list[WrittenRow | WrittenNote]:
    """What of a part is worked in a size (0-based) of so many."""
    out: list[WrittenRow | WrittenNote] = []
    for one in items:
        if isinstance(one, WrittenRow):
            if one.sizes is not None and size not in one.sizes:
                continue
            if one.mark is not None and any(one.mark.by_size):
                one = replace(one, mark=_for_size(one.mark, size, sizes))
        out.append(one)
    return out


def _for_size(mark: Mark, size: int, sizes: int) -> Mark:
    """A label with the numbers of one size; as it is where it has not one for each."""
    firsts, lasts = mark.by_size
    if not firsts and len(lasts) == sizes:
        # "Next 8 (10, 12) rnds:"
        return replace(mark, times=lasts[size])
    if len(firsts) not in (1, sizes) or len(lasts) not in (0, 1, sizes):
        return mark
    first = firsts[min(size, len(firsts) - 1)]
    last = lasts[min(size, len(lasts) - 1)] if lasts else first
    return replace(mark, numbers=tuple(range(first, max(first, last) + 1)))
