"""Sentences inside a row that only give a thing its name: "All shells are double shells and will be
referred to as shells", "(this will be called a cluster)".
"""

from __future__ import annotations

from reader.pattern.cursor import Cursor
from reader.pattern.phrasing import act_here
from reader.pattern.tree import Act, Deed

LONGEST = 32
ENDS = (".", ";", ")", "]", "")
NAMED_SO = (("called",), ("referred", "to"), ("known", "as"), ("termed",), ("designated",))


def find_naming(cur: Cursor, start: int) -> Act | None:
    """Such a sentence, taken; None where none begins here."""
    if start and cur.low(-1) not in (".", ";", "(", "["):
        return None
    words: list[str] = []
    while len(words) < LONGEST and cur.low(len(words)) not in ENDS:
        words.append(cur.low(len(words)))
    said = " ".join(words)
    if not any(f" {' '.join(one)} " in f" {said} " for one in NAMED_SO):
        return None
    if not any(word in ("is", "are", "be", "been") for word in words) or "*" in words:
        return None
    cur.at += len(words)
    return act_here(cur, start, Deed.NOTE)
