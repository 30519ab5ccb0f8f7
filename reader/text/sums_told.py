"""Totals that are told with what they are the sum of -> the sum alone: "31 sts: 20 hdc and 11 sc"
and "20 hdc, 11 sc, 31 sts in all" -> "31 sts"; length kept.

Only where the numbers make the sum: it proves that they are a total, and nothing to work.
"""

from __future__ import annotations

import re

from reader.text.fitting import fitted
from reader.text.sought import has_any

_KIND = (
    r"(?:sc|hdc|dc|tr|htr|dtr|s c|d c|single crochets?|double crochets?|trebles?|doubles?|singles?"
    r"|clusters?|cls?|popcorns?|bobbles?|puffs?|bobs?|pcs?|picots?|[kp]|knit|purl|cables?|eyelets?"
    r"|MC|CC|[A-D])"
)
_PART = rf"\d{{1,3}} ?{_KIND}(?: sts?| stitches)?"
_LIST = rf"(?P<list>{_PART}(?: ?(?:,|\+|&|/|and|,? plus) ?{_PART}){{1,5}})"
_ALL = r"(?: (?:in all|in total|altogether|total))"
_SUM = rf"(?<![\d,] )(?P<n>\d{{1,4}})(?:(?: (?:sts?|stitches)){_ALL}?|{_ALL})"
_END = r"[)\]]*(?=[ .;!)\]]*$|[.;!]| (?:ch|turn|join|fasten))"
SUM_FIRST = re.compile(
    rf"(?P<open>[(\[])?{_SUM} ?(?:[:=,—–(\[-]|\bof which\b|\bthat is,?)+ ?"
    rf"(?:made (?:up )?of |i\.e\.,? )?{_LIST}{_END}", re.IGNORECASE | re.MULTILINE,
)
SUM_LAST = re.compile(
    rf"(?P<open>[(\[])?{_LIST} ?(?:[,:=—–(\[-]+|\bmaking\b|\bso\b|\bfor(?: a total of)?) ?"
    rf"{_SUM}{_END}", re.IGNORECASE | re.MULTILINE,
)
PIECES = ("sts", "stitches", "total", "all", "altogether", "=", ":", "(", "[", "making", "which")
AMOUNT = re.compile(r"\d+")


def sums_alone(text: str) -> str:
    """The text so put; any text goes in."""
    if not has_any(text, PIECES):
        return text
    return SUM_LAST.sub(_sum, SUM_FIRST.sub(_sum, text))


def _sum(found: re.Match[str]) -> str:
    amounts = [int(one) for one in AMOUNT.findall(found["list"])]
    if sum(amounts) != int(found["n"]):
        return found.group()
    return fitted(f"({found['n']} sts)" if found["open"] else f"{found['n']} sts", found.group())
