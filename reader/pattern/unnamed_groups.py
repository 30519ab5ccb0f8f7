"""Groups that the text makes without a name and names in a later row: "(2 dc, ch 2, 2 dc) in next
ch", then "shell in ch-2 sp of shell": the list of the group that the name means.
"""

from __future__ import annotations

import re

from reader.text.sought import lowered

NAMES = ("shell", "fan")
"""Names that say nothing of how many stitches are meant; a V stitch always has two."""
_STITCH = r"(?:s\s?c|h\s?d\s?c|d\s?c|tr\s?c?|trebles?|doubles?|htr|dtr)\b(?! tog)"
_ITEM = rf"(?:(?:\d+|an?|one)\s+)?{_STITCH}"
_CHAIN = r"ch(?:ain)?\b\s*\d*"
MADE = re.compile(
    r"(?<!next )(?<!last )(?<!of )"
    rf"(?P<list>[2-9]\s+{_STITCH}(?:\s*,\s*(?:{_ITEM}|{_CHAIN})){{1,6}})"
    r"\s*\)?\s+(?:all )?in(?:to)?\s"
    r"(?:the )?(?:next|same|last|1st|first|\d+(?:st|nd|rd|th)|each|every|center|centre|ch"
    r"|skipped)\b",
    re.IGNORECASE,
)
"""A list of stitches, with chains or without, in one place."""


def named_later(text: str, known: set[str]) -> list[tuple[int, str, str]]:
    """For each name that is used and nowhere explained: where the group that it means is made, the
    name, and the list of its stitches. known: names that are explained.
    """
    found: list[tuple[int, str, str]] = []
    low = lowered(text)
    for name in NAMES:
        if name not in low:
            continue
        used = re.search(rf"\b{name}s?(?: sts?)? (?:in|into|over|on)\b", text, re.IGNORECASE)
        told = (
            rf"\b{name}s?\b(?: st(?:itch)?)?(?: ?\([^()\n]{{1,12}}\))?"
            r"\s*(?:=|:|—| - |\bof\b|made\b)"
            rf"|\([^()\n]{{0,24}}\b{name}s?\b[^()\n]{{0,12}}\)"
        )
        if used is None or name in known or re.search(told, text, re.IGNORECASE):
            continue
        before = list(MADE.finditer(text, 0, used.start()))
        if before:
            last = before[-1]
            found.append((last.start("list"), name, last["list"]))
    return found
