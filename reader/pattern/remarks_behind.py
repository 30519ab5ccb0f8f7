"""What is only said behind a row's total, "59 hdc (turning ch not counted)", "59 hdc, not counting
the ch" -> where it begins.
"""

from __future__ import annotations

import re

CHAIN_TOLD_OF = (
    r"(?:(?:do(?:es)? )?not (?:counting|including|incl\.?|count(?:ed)?|including) )?"
    r"(?:(?:the|your|this|counting|including|incl\.?|excluding|count) )*"
    r"(?:(?:first|1st|initial|turning|starting|beginning|beg|start|edge|last) )*"
    r"(?:t-?ch|ch(?:ain)?s?(?:[- ]?\d)?|\d[- ]ch)(?: at (?:beg(?:inning)?|start|end))?"
    r"(?: (?:is|was|are|does|do|counts?|counted|not|never|always|included|as|for|stands?"
    r"|a|1|one|the|st|stitch|[sdht]r?[ -]?c|h ?d ?c|h?tr|half d c|first|each time|throughout|of"
    r"|in|count|total|this|these|all))*"
)
"""How it is told what a chain counts for."""
REMARK_BEHIND = re.compile(
    r"\s*\((?![^()]*\b(?:total|sts|stitches)\b)[^()\d]{0,12}[a-z][^()]{6,80}\)\s*$", re.IGNORECASE
)
"""Words in a bracket behind everything else: "= 3 tr (missed ch count as 1 tr)"."""
CHAIN_BEHIND = re.compile(
    rf"\s*[,;—-]+ ?{CHAIN_TOLD_OF}$|\s*\({CHAIN_TOLD_OF}\)$", re.IGNORECASE
)
"""The same of the chain alone: "59 hdc, turning ch not counted", "59 hdc (ch 2 is not a st)"."""
LONGEST_TAIL = 110
"""Characters of a total without brackets."""


def before_remarks(text: str, ends: list[int]) -> list[int]:
    """Where a remark on what is counted begins, that stands before one of the ends."""
    starts: list[int] = []
    for end in ends:
        piece = text[max(0, end - LONGEST_TAIL) : end].rstrip(". ")
        remark = REMARK_BEHIND.search(piece) or CHAIN_BEHIND.search(piece)
        starts += [max(0, end - LONGEST_TAIL) + remark.start()] if remark else []
    return starts
