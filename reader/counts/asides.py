"""Rows that only say something: whether a row's words work stitches at all, and a question where
they may.
"""

from __future__ import annotations

import re
from dataclasses import replace

from reader.counts.counted import Problem
from reader.counts.entries import Entry, nothing_worked, orders
from reader.counts.faults import Where as Spot
from reader.counts.faults import unclear
from reader.counts.lists import knits
from reader.counts.sentences import without_heading
from reader.counts.solved import Solved
from reader.pattern.tree import LOST, Act, Where, Work


def _only_moves(entry: Entry, solved: Solved) -> bool:
    """ "K6 to get to the middle of the heel": plain stitches that are not a row."""
    works = [one for one in entry.nodes if not isinstance(one, Act)]
    fixed = all(
        isinstance(one, Work)
        and one.stitch.takes == one.stitch.makes
        and one.place.where is Where.PLAIN
        for one in works
    )
    return fixed and solved.fits is False and solved.left > 0


def _numbers_lost(entry: Entry) -> bool:
    """Whether a labelled row is nothing but words that made no sense, with numbers among them."""
    lost = [one for one in entry.nodes if isinstance(one, Act) and one.into == LOST]
    return any(char.isdigit() for one in lost for char in one.words)


HANDS = re.compile(
    r"\b(?:(?:draw|pull|pick|take|bring)(?:ing)?\s(?:up\s)?(?:through\s)?(?:a|another|one|1|the|each)"
    r"\s(?:\w+\s)?(?:loops?|lps?)|work(?:ing)?\soff|insert(?:ing)?\s(?:the\s)?(?:hook|needle))\b",
    re.IGNORECASE,
)
"""What the hands do to make a stitch: loops drawn up and worked off."""


CHANGES = re.compile(
    r"\b(?:inc|dec|tog|narrow|widen|shap|skip|sk\b|miss|omit|cast|bind|off\b|yo\b|over|yfwd|wfwd|m1"
    r"|make|cluster|shell|loop\b|ch\b|chain|sp\b|space|join|divid|leav|hold|left|pick|slip|sl\b"
    r"|psso|ssk|skp|kfb|more st|less st|fewer|extra|each end|both ends|corner|motif|\d+ sts?"
    r"|\d+ stitches|count|until|till|edge|side)",
    re.IGNORECASE,
)
"""Words of rows that may leave another number of stitches than they found."""
UNCHANGED = "Until then the number of stitches is taken as unchanged."


def _by_hand(entry: Entry, words: str) -> bool:
    """Whether a crocheted row tells what the hands do, of which no stitch was made out."""
    return not knits(entry.nodes) and HANDS.search(words) is not None


def set_apart(
    entry: Entry, solved: Solved, where: Spot, below: int | None, stated: int | None
) -> tuple[bool, Problem | None]:
    """Whether the row leaves what lies below as it is; and a question, where it is set apart only
    because it does not begin as an instruction does, though its words would change the count.
    """
    unlabelled = entry.row.mark is None
    if nothing_worked(entry.nodes, unlabelled):
        lost = not unlabelled and (_numbers_lost(entry) or _by_hand(entry, where.words))
        # Of words that speak of no change the question is enough: the rows behind can be counted.
        kept = lost and stated is None and CHANGES.search(where.words) is None
        question = unclear(where, stated) if lost else None
        if kept and question is not None:
            question = replace(question, message=f"{question.message} {UNCHANGED}")
        return not lost or kept, question
    told = unlabelled and knits(entry.nodes)
    if told and _only_moves(entry, solved):
        return True, unclear(where, None)
    if not told or orders(without_heading(where.words).strip()):
        return False, None
    changes = solved.count is not None and solved.count != below
    if changes and solved.fits is True:
        return False, None
    return True, unclear(where, None) if changes and below is not None else None
