"""Knitting text -> the same text, length kept, with stitches picked up in lots told as one number:
"pick up 22 sts on right front, then 13 (13-15) sts from sleeve holder, then 39 from back holder" as
"pick up and k 74 (74-76) sts".
"""

from __future__ import annotations

import re
from collections.abc import Iterable

from reader.text.sought import Sought

_N = r"\d+(?:\s*[(\[][\d\s,:;/-]+[)\]])?"
_WHERE = r"(?:on|along|across|from|in|around|down|up|at|of|over|for|between)\b"
_STS = r"(?:sts?\b\.?|stitches)"
_MORE = (
    r"(?P<by>\s*[,;]\s*(?:and\s+)?(?:then\s+)?|\s+(?:and|then)\s+(?:then\s+)?)(?:(?:and\s+)?(?:pick\s+up"
    r"(?:\s+(?:and|&)\s+(?:k|knit))?|k|knit)\s+)?"
    rf"(?P<n>{_N})(?P<sts>\s+{_STS})?(?P<where>\s+{_WHERE})?"
)
LOTS = Sought(
    ("pick", "take"),
    rf"(?P<pick>\b(?:pick|take)\s+up(?:\s+(?:and|&)\s+(?:k|knit))?\s+)(?P<first>{_N})\s+{_STS}"
    rf"(?P<behind>(?:[^.(\n—:=]|\n(?!\s*\n)|\((?!\d)[^()]{{0,160}}\)|\(\d[\d\s,:;/-]*\)"
    r"|(?<=\bsts)\.(?=\s+[a-z])){12,500})",
    re.IGNORECASE,
)
ONE_MORE = re.compile(_MORE, re.IGNORECASE)
LEAST = 2


def lots_picked_up(text: str) -> str:
    """The text so put; any text goes in."""
    return LOTS.sub(_as_one, text)


def _values(said: str) -> tuple[int, ...]:
    return tuple(int(one) for one in re.findall(r"\d+", said))


def _sum(lots: Iterable[tuple[int, ...]]) -> tuple[int, ...]:
    """The lots of each size together; () where their lists are of different lengths."""
    told = list(lots)
    sizes = max(map(len, told))
    if any(len(one) not in (1, sizes) for one in told):
        return ()
    wide = [one * sizes if len(one) == 1 else one for one in told]
    return tuple(map(sum, zip(*wide, strict=True)))


def _as_one(found: re.Match[str]) -> str:
    whole = found.group()
    more = [one for one in ONE_MORE.finditer(found["behind"]) if one["where"] or one["sts"]]
    total = more[-1] if more and not more[-1]["where"] and more[-1].end() == _end(found) else None
    lots = [one for one in more if one is not total]
    plain = all(one["sts"] and ";" not in one["by"] and "then" not in one["by"] for one in lots)
    if len(lots) < LEAST or plain or any(one["where"] is None for one in lots):
        return whole
    together = _sum([_values(found["first"]), *(_values(one["n"]) for one in lots)])
    if not together or (total is not None and _values(total["n"]) != together):
        return whole
    sizes = f" ({'-'.join(map(str, together[1:]))})" if len(together) > 1 else ""
    said = f"{found['pick'].split()[0]} up and k {together[0]}{sizes} sts"
    return said.ljust(len(whole)) if len(said) <= len(whole) else whole


def _end(found: re.Match[str]) -> int:
    return len(found["behind"].rstrip())
