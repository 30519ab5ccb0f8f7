"""Crochet rows told one after the other in running text, without labels: "Work across 16 sts, turn.
Work across 8 sts, cut yarn. Skip 18 sts, attach yarn in next st ..." -> each a row of its own.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from reader.counts.fabric import plain
from reader.pattern.layout import WrittenRow
from reader.pattern.line_words import ACTION, STITCHY

if TYPE_CHECKING:
    from reader.counts.ledger import Ledger

NEXT_ROW = re.compile(
    r"(?<=\bturn\.)\s+(?=[A-Z*]|\d+ (?:[sd] ?c|h ?d ?c|h?tr)\b"
    r"|(?:picking|working|skip|miss|then|ch \d|[sd] ?c\b|h ?d ?c\b|tr\b|sl st)\b)"
    r"|(?:(?<=\bcut yarn\.)|(?<=\bcut\.)|(?<=\boff\.)|(?<=\bcut thread\.)|(?<=\bbreak yarn\.))"
    r"\s+(?=(?:Skip|Miss|Sk|Attach|Join|Rejoin|Leave|Leaving|Return|With|Sl st)\b)"
)
"""Where a row is over and the next begins."""
AGAIN = re.compile(r"\W*(?:rep(?:eat)?|work(?:ing)? (?:even|in pattern|\d))\b", re.IGNORECASE)
"""A rule over rows, which stays with the row before it."""
BEGINS_TURNED = re.compile(
    r"\W*(?:(?:then|now|and|to begin|with \w+|using \w+),?\s+)*(?:turn\W*(?:and|then)?\s*)?"
    r"(?:(?:ch|chain|make|work)\s+(?:\d+|one|two|three|four|a)(?:\s+(?:ch\w*|sts?))?"
    r"|\d+\s+ch\w*)\s*(?:\([^()]*\)\W*)?(?:\W|and|then|the|work|your|now)*turn\.?\s*$",
    re.IGNORECASE,
)
"""A row that has only begun: "Ch 2 (does not count as a st) and turn."."""
SECOND_SIDE = re.compile(
    r"\W*(?:with\s+(?:the\s+)?(?:wrong|right)\s+side\b[^.;,]{0,60},\s*)?"
    r"(?:(?:skip|miss|sk|leave|leaving)\b[^.;]{0,50}?\b(?:attach|rejoin|join(?!\s*(?:[,.;)]|$)"
    r"|\s+(?:rnd|round|with\s+(?:a\s+)?(?:sl|ss)|(?:in|to)\s+(?:the\s+)?(?:1st|first|top|form))))"
    r"|(?:re-?join|attach"
    r"|join)\b[^.;]{0,60}?\b(?:remaining|other side|skipp?ed|other shoulder|next st))",
    re.IGNORECASE,
)
"""The other half of a row that was parted: over the stitches that were left there."""


def running_rows(text: str, row: WrittenRow) -> list[WrittenRow]:
    """The row cut where its sentences are rows; only the first keeps the label, and a row with a
    number stays whole.
    """
    if row.mark is not None and row.mark.numbers:
        return [row]
    words = text[row.start : row.end]
    out: list[WrittenRow] = []
    at = 0
    for cut in [*(found.end() for found in NEXT_ROW.finditer(words)), len(words)]:
        piece, behind = words[at:cut], words[cut:]
        begun = BEGINS_TURNED.match(piece) is not None or not _works(piece)
        if cut < len(words) and (begun or not _works(behind) or AGAIN.match(behind)):
            continue
        if piece.strip():
            out.append(WrittenRow(row.mark if not out else None, row.start + at, row.start + cut))
        at = cut
    return out or [row]


def _works(words: str) -> bool:
    return ACTION.search(words) is not None and STITCHY.search(words) is not None


def on_the_other_side(ledger: Ledger, row: WrittenRow) -> None:
    """Lets a row that begins the second side of a parted piece lie over the stitches left there."""
    if ledger.unworked and SECOND_SIDE.match(ledger.text[row.start : row.end]):
        ledger.below, ledger.unworked = plain(ledger.unworked), 0
