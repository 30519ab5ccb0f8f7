"""Crochet text -> the same text, length kept, with what a round's first chain stands for told as
most tell it: "Chain 5 (read this as one dc plus a gap of 2 chains)" -> "(counts as dc + ch-2 sp)".
"""

from __future__ import annotations

import re

from reader.text.fitting import fitted
from reader.text.sought import Sought

NUMBERS = {"one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7}
_N = rf"(?:\d|{'|'.join(NUMBERS)})"
_A = r"(?:(?:an?|one|1|the|your|my|first|1st)[ ]){0,2}"
_STITCH = (
    r"(?:[hd]{1,2}c|d?tr|htr|sc|(?:half[ -])?(?:single|double|treble)(?:[ ](?:crochet|treble))?)"
)
_VERB = (
    r"(?:(?:(?:which|that|this|it|these)[ ])?(?:always[ ])?"
    r"(?:counts?[ ](?:it[ ]|this[ ])?as|stands?[ ]for|is|are|serves?[ ]as|equals?|represents?"
    r"|makes?|acts?[ ]as|works[ ]as|replaces)"
    r"|that's|it's|(?:read|take|treat|count|see|think[ ]of|regard|consider)[ ](?:(?:this|it|that"
    r"|them|these)[ ])?(?:as)|call[ ](?:it|this|that)|being|for|your|=)"
)
_GAP = (
    rf"(?:{_A}(?:gap|space|sp|loop|hole|arch)[ ]of[ ](?P<a>{_N})[ ]ch(?:ain)?s?"
    rf"|{_A}ch(?:ain)?[ -]?(?P<b>{_N})(?:[ -](?:gap|space|sp|loop|hole|arch))?"
    rf"|{_A}(?P<c>{_N})[ -]?ch(?:ain)?s?(?:[ -](?:gap|space|sp|loop|hole|arch))?)"
)
EXPLAINED = Sought(
    ("ch",),
    rf"(?P<ch>\bch(?:ain)?[ ]{_N}|\b{_N}[ ]ch(?:ain)?s?)(?P<open>,?[ ]\(|,[ ]|[ ][–—-][ ])"
    rf"{_VERB}[ ]+{_A}"
    rf"(?P<stitch>{_STITCH})(?:[ ]\+[ ]|,?[ ](?:and|plus|with|&|then)[ ]|,[ ]){_GAP}(?P<close>\)?)"
    r"(?=[.,;:]|$|\))",
    re.IGNORECASE | re.MULTILINE,
)


def begun_with_gap(text: str) -> str:
    """The text so put; any text goes in."""
    return EXPLAINED.sub(_usual, text)


def _usual(found: re.Match[str]) -> str:
    chains = (found["a"] or found["b"] or found["c"]).lower()
    stitch, number = found["stitch"], NUMBERS.get(chains, chains)
    if ("(" in found["open"]) != bool(found["close"]):
        return found.group()
    for said in ("counts as {} + ch-{} sp", "= {} + ch-{} sp", "={}+ch-{} sp"):
        told = f"{found['ch']} ({said.format(stitch, number)})"
        if len(told) <= len(found.group()):
            return fitted(told, found.group())
    return found.group()
