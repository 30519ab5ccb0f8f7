"""Lines that a page set wide, with two or three blanks between their words, as copies keep them."""

from __future__ import annotations

import re
from bisect import bisect_right

GAP = re.compile(r"(?<=\S) +(?=\S)")
WIDE = re.compile(r"(?<=\S) {2,3}(?=\S)")
LEAST_WIDE = 3
"""Gaps of two or three blanks in a line that a page set wide to fill it; a table has wider ones."""


def wide_lines(raw: str) -> list[tuple[int, int]]:
    """The lines whose words a page set wider than one blank, from where to where."""
    lines: list[tuple[int, int]] = []
    if "  " not in raw:
        return lines
    all_gaps, all_wide = len(GAP.findall(raw)), len(WIDE.findall(raw))
    everywhere = all_wide > 15 and 3 * all_wide >= all_gaps
    at = 0
    for line in raw.split("\n"):
        gaps = [len(one) for one in GAP.findall(line)]
        wide = [one for one in gaps if one > 1]
        narrow = bool(wide) and max(wide) <= LEAST_WIDE
        if narrow and (everywhere or (len(wide) >= LEAST_WIDE and 3 * len(wide) >= len(gaps))):
            lines.append((at, at + len(line)))
        at += len(line) + 1
    return lines


def in_lines(lines: list[tuple[int, int]], at: int) -> bool:
    """Whether a place lies in one of the lines."""
    found = bisect_right(lines, (at, len(lines) + 10**12)) - 1
    return found >= 0 and lines[found][0] <= at < lines[found][1]
