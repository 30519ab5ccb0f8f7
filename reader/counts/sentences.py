"""A row's words -> the stretches that are rows of their own: knitting prose puts several in one
paragraph.
"""

from __future__ import annotations

import re

from reader.pattern.layout import WrittenRow
from reader.pattern.line_words import ACTION

NEXT_SENTENCE = re.compile(
    r"(?<=[.])\s+(?:sts\.?\s+)?(?=(?:(?:then|now)\s+)?(?:work|continue|cont\b|bind off|cast off"
    r"|bo \d|dec\b|inc\b|decrease|increase"
    r"|knit|purl|pearl|rep(?:eat)?\b(?!\s*(?:from\s*)?\*)|shape|k\s*\d|p\s*\d|\*\s*k|beg with"
    r"|next row|change to|place)\b)",
    re.IGNORECASE,
)


def sentences_of(text: str, row: WrittenRow) -> list[WrittenRow]:
    """The row cut at sentences that begin a new instruction; only the first keeps the label."""
    words = text[row.start : row.end]
    cuts = [found.end() for found in NEXT_SENTENCE.finditer(words)]
    out: list[WrittenRow] = []
    at = 0
    for cut in [*cuts, len(words)]:
        piece = words[at:cut]
        if cut < len(words) and not ACTION.search(piece):
            continue
        if piece.strip():
            out.append(WrittenRow(row.mark if not out else None, row.start + at, row.start + cut))
        at = cut
    return out or [row]
