"""Rows that end in another way in each size: "ending with K 1 (K 3, K 2 tog)" of three sizes, read
for one of them. Length kept.
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


def of_one_size(words: str, size: int, sizes: int) -> str:
    """The words with the way of that size (0-based) alone, where there is one for each of so many.
    """
    return WAYS.sub(lambda found: _chosen(found, size, sizes), words) if sizes > 1 else words


def _chosen(found: re.Match[str], size: int, sizes: int) -> str:
    ways = [one.group().strip() for one in ONE_WAY.finditer(found["ways"])]
    if len(ways) != sizes:
        return found.group()
    before = found.group()[: found.start("ways") - found.start()]
    return before + ways[size].ljust(len(found["ways"]))
