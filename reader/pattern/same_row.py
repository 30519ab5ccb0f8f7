"""Rows told by the number of another: "same as 4th row", "as the last row", "same again"."""

from __future__ import annotations

import re

from reader.pattern.labels import opened
from reader.pattern.rule import Rule
from reader.pattern.rule_words import (
    BETWEEN_INCS,
    CHANGES_COUNT,
    FEWER_LOOPS,
    PLAIN_DIFFERENCE,
    SAME_AS,
    THE_SAME,
)


def same_as(words: str) -> Rule | None:
    """ "Same as 4th row"; a difference named behind it makes it something else."""
    again = THE_SAME.match(words)
    if again:
        return Rule("same", rest=words[again.end() :], named=(0,))
    found = SAME_AS.match(words)
    if not found:
        return None
    rest = found.group("rest")
    goes_on = re.match(r"\s*(?:,|for|until|\d+|through|to\b|and\b|once|twice|alternately)", rest)
    if goes_on and re.match(r"\W*(?:rep|repeat)\b", words, re.IGNORECASE):
        return None
    if found.group("last") and re.match(r"\W*(?:rep|repeat)\b", words, re.IGNORECASE):
        return None
    numbers = opened(found.group("a") or found.group("b") or "0")
    differing = PLAIN_DIFFERENCE.search(rest[:40])
    if differing is not None and BETWEEN_INCS.search(rest):
        # As many increases as in the row that is quoted, only farther apart.
        return Rule("same", numbers[0], numbers[-1], rest=rest, named=numbers, by_gain=True)
    differs = differing is not None and bool(CHANGES_COUNT.search(rest[differing.end() :]))
    fewer = FEWER_LOOPS.search(rest) is not None
    return Rule(
        "same", numbers[0], numbers[-1], rest=rest, named=numbers, differs=differs, fewer=fewer
    )
