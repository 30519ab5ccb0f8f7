"""Whether the lines of a paragraph are a printer's, who broke them where no word had room."""

from __future__ import annotations

from itertools import pairwise

LEAST_WIDTH = 46
"""Characters: lines are not wrapped to less than this."""
MOST_WIDTH = 120
"""Characters: wider lines are paragraphs, each on a line of its own."""


def is_wrapped(lines: list[str]) -> bool:
    """Whether each line but the last is so full that the next one's first word had no room."""
    widest = max((len(line.rstrip()) for line in lines), default=0)
    if not LEAST_WIDTH <= widest <= MOST_WIDTH:
        return False
    return all(
        len(line.rstrip()) + 1 + len(below.split(maxsplit=1)[0]) > widest
        for line, below in pairwise(lines)
        if below.strip()
    )
