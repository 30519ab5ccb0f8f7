"""The kinds of remarks between rows: materials, gauge, key, note."""

from __future__ import annotations

from collections.abc import Sequence

from reader.pattern.labels import Mark
from reader.pattern.line_words import MATERIALS, TOOLS


def told_kind(words: str, marks: Sequence[Mark], start: int) -> str:
    """The kind of remark that a block begins as; "" for none."""
    kind = MATERIALS.match(words)
    if kind and not (marks and marks[0].start > start + 3 and len(marks) > 1):
        return kind_of(kind.group(1))
    return "materials" if not marks and TOOLS.match(words) else ""


def kind_of(word: str) -> str:
    """The kind of remark that a heading's words begin."""
    low = word.lower()
    if low.startswith(("gauge", "tension")):
        return "gauge"
    if low.startswith(("abbrev", "special", "stitch", "key", "terms")) or "abbrev" in low:
        return "key"
    notes = ("note", "summary", "overview", "skill", "diff", "size", "finished", "measure")
    if low.startswith(notes):
        return "note"
    return "materials"
