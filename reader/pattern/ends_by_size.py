"""What each size works in another way: rows that end with "K 1 (K 3, K 2 tog)", stitches together
in some, "K 0 (2, 2) tog"; read for one of them. Length kept.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

_OP = (
    r"(?:(?:[kp]|knit|purl|sl|slip|inc|dec|ss[kp]|skp|yo|y ?o|ch)\b\.?|[kp](?=\d))[ -]?"
    r"(?:\d+(?: ?tog\b)?)?"
)
_WAY = rf"{_OP}(?:(?: and)?\s+{_OP})*"
_LIST = rf"{_WAY}\s*[(\[]\s*{_WAY}(?:\s*,\s*{_WAY})*\s*[)\]]"
WAYS = Sought(
    ("end", "beg", "start"),
    r"\b(?:end|begin|beg|start)(?:ing|s)?\b\.?(?:\s+(?:the\s+)?last\s+rep(?:eat)?)?(?:\s+with)?\s+"
    rf"(?P<ways>{_LIST}(?:\s*{_LIST})?)",
    re.IGNORECASE,
)
ONE_WAY = re.compile(_WAY, re.IGNORECASE)
TOGETHER = Sought(
    ("tog",),
    r"(?<!\w)(?P<verb>[kp])\s?(?P<first>\d)\s*[(\[](?P<more>\s*\d(?:\s*,\s*\d)*)\s*[)\]]\s*tog\b",
    re.IGNORECASE,
)


def of_one_size(words: str, size: int, sizes: int) -> str:
    """The words with the way of that size (0-based) alone, where there is one for each of so many.
    """
    if sizes < 2:
        return words
    words = TOGETHER.sub(lambda found: _together(found, size, sizes), words)
    return WAYS.sub(lambda found: _chosen(found, size, sizes), words)


def _chosen(found: re.Match[str], size: int, sizes: int) -> str:
    ways = [one.group().strip() for one in ONE_WAY.finditer(found["ways"])]
    if len(ways) != sizes:
        return found.group()
    before = found.group()[: found.start("ways") - found.start()]
    return before + ways[size].ljust(len(found["ways"]))


def _together(found: re.Match[str], size: int, sizes: int) -> str:
    numbers = [found["first"], *re.findall(r"\d", found["more"])]
    if len(numbers) != sizes:
        return found.group()
    mine = numbers[size]
    told = "" if mine == "0" else f"{found['verb']} {mine}" + " tog" * (mine > "1")
    return told.ljust(len(found.group()))
