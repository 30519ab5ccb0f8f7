"""How wide the lines of each paragraph are, and whether an author broke them or a machine."""

from __future__ import annotations

import re


def widths_of(lines: list[str]) -> list[int]:
    """For each line, the longest line of its paragraph: where the lines of that paragraph are
    wrapped.
    """
    widths = [0] * len(lines)
    first = 0
    for at in range(len(lines) + 1):
        if at == len(lines) or not lines[at].strip():
            longest = max((len(line.rstrip()) for line in lines[first:at]), default=0)
            widths[first:at] = [longest] * (at - first)
            first = at + 1
    return widths


SPOKEN_ORDER = re.compile(
    r"(?:(?:and )?then |now |next,? |so )*(?:(?:knit|purl|k|p) ?(?:\d|one|two|three|four|five|six"
    r"|seven|eight|nine|ten|all|every|to|across|around)\b"
    r"|(?:(?:and )?then|now) (?:we|you|i|just|it's|a|an|one)\b|next:)"
)
"""How a line told aloud begins that tells what comes next."""
ROOM = 24
"""Characters left free on a line that no machine wrapped."""


def by_hand(lines: list[str], widths: list[int]) -> list[bool]:
    """For each line, whether most lines of its paragraph leave room, so that an author broke them.
    """
    free = [len(line.rstrip()) + ROOM < width for line, width in zip(lines, widths, strict=True)]
    by_hand = [False] * len(lines)
    first = 0
    for at in range(len(lines) + 1):
        if at == len(lines) or not lines[at].strip():
            by_hand[first:at] = [2 * sum(free[first:at]) > at - first] * (at - first)
            first = at + 1
    return by_hand
