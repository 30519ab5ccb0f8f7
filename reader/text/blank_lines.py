"""Copies that set an empty line behind every line of the page: lines that a sentence goes on over
are brought together again; length kept.
"""

from __future__ import annotations

import re
from itertools import pairwise

LEAST = 6
"""Lines of a text that tell how it was copied."""
ENDS = ".;:!?)]"
GOES_ON = re.compile(r"\s*(?:[a-z(\[*]|\d+ ?[a-z])")
APART = re.compile(r"\n[ \t]*\n(?=[^\n]*\S)")


def without_blank_lines(text: str) -> str:
    """The text without the empty lines of such a copy; any other text as it is."""
    lines = text.split("\n")
    told = [at for at, line in enumerate(lines) if line.strip()]
    if len(told) < LEAST:
        return text
    beside = sum(b == a + 1 for a, b in pairwise(told))
    if beside * 20 > len(told):
        return text
    broken = sum(
        lines[a].rstrip()[-1] not in ENDS and GOES_ON.match(lines[b]) is not None
        for a, b in pairwise(told)
    )
    if broken * 7 < len(told):
        return text
    return APART.sub(lambda found: " " * (len(found.group()) - 1) + "\n", text)
