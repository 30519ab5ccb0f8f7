"""Text with numbers for every size in, the same text with only the chosen size's numbers out."""

from __future__ import annotations

import re
from functools import cache

_VALUE = r"(?:\d+(?:\.\d+)?(?:[ -]?[½¼¾⅓⅔⅛⅜⅝⅞]|[ -]\d/\d)?|[½¼¾]|[-–—]+)"
_UNIT = r"(?:\s?(?:\"|”|″|in\b|cm\b|mm\b|g\b|m\b|yds?\b))?"
NONE = "0"
"""What a dash in a list of sizes stands for: nothing to work in this size."""


def only_size(text: str, size: int, names: tuple[str, ...]) -> str:
    """The text with each list of values, one a size, replaced by the value of size `size`
    (0-based).

    Lists with another number of values stay as they are. "36 (40, 44)", "52[54:56:60]" and, for
    the sizes' own
    names, "S (M, L)" are lists. A dash becomes 0.
    """
    if len(names) < 2 or not 0 <= size < len(names):
        return text
    return _lists(names).sub(lambda found: _chosen(found.group(), size, len(names)), text)


@cache
def _lists(names: tuple[str, ...]) -> re.Pattern[str]:
    more = len(names) - 1
    spelt = "|".join(re.escape(name) for name in names if name.strip())
    value = rf"(?:\b(?:{spelt})|{_VALUE})" if spelt else _VALUE
    rest = rf"\s*{value}{_UNIT}(?:\s*[,:;/]\s*{value}{_UNIT}){{{more - 1}}}\s*"
    return re.compile(rf"(?<![\d.]){value}{_UNIT}\s*(?:\({rest}\)|\[{rest}\])", re.IGNORECASE)


def _chosen(found: str, size: int, count: int) -> str:
    values = [v.strip() for v in re.split(r"[\[(,:;/\])]", _guarded(found)) if v.strip()]
    if len(values) != count:
        return found
    chosen = values[size].replace("\x00", "/")
    return NONE if re.fullmatch(r"[-–—]+", chosen) else chosen


def _guarded(found: str) -> str:
    """The slash of a fraction is no divider between sizes."""
    return re.sub(r"(?<=\d[ -]\d)/(?=\d)", "\x00", found)
