"""Knitting text -> the same text, length kept, with what is bound off or cast on over so many rows
told as patterns have it: "cast off 6 sts to start each of next 2 rows; then 7 on the 2 after" as
"cast off 6 sts at beg of next 2 rows, then 7 sts at beg of next 2 rows".
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED
from reader.text.fitting import fitted
from reader.text.sought import Sought

_N = rf"(?:\d{{1,3}}|{SPELLED})"
_LIST = r"(?:\s?[(\[][\d ,:;/-]+[)\]]|(?:\s?[,/:-]\s?\d{1,3})+)?"
_STS = r"(?:\s(?:more\s)?(?:sts?|stitches))?"
_NEXT = r"(?:next|following|foll\.?|subsequent|ensuing)"
_BEHIND = (
    r"(?:\s(?:after(?:\s(?:that|those|these))?|(?:that|which|to)\sfollow|following))"
)
_EACH = r"(?:(?:each|every\sone|both)(?:\sof)?\s)?"
_WHICH = (
    rf"{_EACH}(?:the\s|these\s)?(?:{_NEXT}\s{_N}(?:\s{_NEXT})?\s(?:rows|needles)"
    rf"|{_N}\s{_NEXT}\s(?:rows|needles)|{_N}\srows{_BEHIND})"
)
"""Which rows, "each of the next 2 rows", "the 2 rows after that"."""
_ELLIPSED = (
    rf"{_EACH}(?:the\s)?(?:{_NEXT}\s{_N}|{_N}(?:{_BEHIND}|\s{_NEXT}))"
    r"(?=\s*(?:[.;:,(\n—-]|$))"
)
"""The same with no word for rows, "the 2 after"."""
_START = r"(?:beg(?:inning|in|\.)?|start|opening|commencement|outset)"
_AT = rf"(?:(?:at|on|from|in)\s)?(?:the\s|each\s)?{_START}(?:\s(?:of|on|in))?"
_TO = r"(?:to\s(?:start|begin|open|commence)|(?:beginning|starting|opening|commencing))"
_PLACE = (
    rf"(?:(?:{_AT}|{_TO}|on|over|in|at)\s{_WHICH}(?:\s{_AT})?(?=\s*(?:[.;:,(\n—-]|$|and\b|then\b"
    rf"|leav))"
    rf"|at\s{_EACH}(?:the\s)?{_NEXT}\s{_N}\srow\s(?:starts|beginnings))"
)
_TOTAL = rf"(?P<stop>:(?=\s\d{{1,3}}{_LIST}\s(?:sts|stitches)\b))?"
"""A colon before the total, that would make a label of the rows."""
_SHORT = rf"(?:{_AT}|{_TO}|on|over|in|at)\s{_ELLIPSED}"
OFF = Sought(
    ("bind", "cast", "take", "taking"),
    rf"(?P<off>\b(?:bind|cast|binding|casting|take|taking)\s(?:off"
    rf"|on))(?:\sfor\s(?:the\s)?(?:\w+\s)?"
    rf"\w+)?\s(?P<n>{_N}{_LIST})(?P<sts>{_STS})\s(?:for\s(?:the\s)?\w+\s)?"
    rf"(?P<place>{_PLACE}){_TOTAL}",
    re.IGNORECASE,
)
AND_OFF = Sought(
    ("next", "foll", "after", "subsequent", "ensuing"),
    rf"(?P<join>[;,]?\s(?:and\s)?then,?\s|,\s(?:and\s)?|;\s|\sand\s)(?P<again>(?:bind|cast"
    rf"|take)\s(?:off|on)\s)?"
    rf"(?P<n>{_N}{_LIST})(?P<sts>{_STS})\s(?P<place>{_PLACE}|{_SHORT}){_TOTAL}",
    re.IGNORECASE,
)
"""What goes on behind it, "then 6 sts to start each of following 2 rows"."""
PLACE_FIRST = Sought(
    ("next", "foll", "after", "subsequent", "ensuing"),
    rf"(?P<lead>(?:^|(?<=[.;:,]\s)|(?<=\n))(?:(?:then|and|now)\s)*)(?P<place>(?:{_AT}|{_TO}|on"
    rf"|over|in)\s{_WHICH}),?\s"
    rf"(?P<off>(?:bind|cast|take)\s(?:off|on)\s)?(?P<n>{_N}{_LIST})(?P<sts>{_STS})(?:\s{_AT}(?:\s"
    rf"(?:each|the|every)"
    r"(?:\srow)?|\srows?)?)?(?=\s*(?:[.;:,(\n—-]|$))",
    re.IGNORECASE | re.MULTILINE,
)


ROWS = re.compile(rf"(?<!every )\b{_N}\b", re.IGNORECASE)
"""How many rows a place names."""


OFF_BEFORE = re.compile(r"\b(?:bind|cast|take|binding|casting)\s(?:off|on)\b", re.IGNORECASE)


def row_beginnings(text: str) -> str:
    """The text so put; any text goes in."""
    if not OFF.may_stand(text):
        return text
    begun = _Begun(text)
    for shape, put in ((PLACE_FIRST, begun.place_first), (OFF, begun.off), (AND_OFF, begun.more)):
        begun.text = shape.sub(put, begun.text)
    return begun.text


class _Begun:
    """The text while its sentences are put: what goes on needs a binding off before it."""

    def __init__(self, text: str) -> None:
        self.text = text

    def place_first(self, found: re.Match[str]) -> str:
        if found["off"] is None and not self._goes_on(found):
            return found.group()
        off = (found["off"] or "").lower().replace("take", "cast")
        off = off.capitalize() if found["lead"] == "" and off else off
        return _said(f"{found['lead']}{off}{found['n']} sts", found)

    def off(self, found: re.Match[str]) -> str:
        off = re.sub("take", "cast", found["off"], flags=re.IGNORECASE)
        off = off.capitalize() if found["off"][0].isupper() else off
        return _said(f"{off} {found['n']} sts", found)

    def more(self, found: re.Match[str]) -> str:
        if not self._goes_on(found):
            return found.group()
        return _said(f", {(found['again'] or '').lower()}{found['n']} sts", found)

    def _goes_on(self, found: re.Match[str]) -> bool:
        before = self.text[max(0, found.start() - 160) : found.start()]
        last = re.split(r"[.\n](?=\s|$)", before)[-1]
        return OFF_BEFORE.search(last) is not None


def _said(what: str, found: re.Match[str]) -> str:
    """What is done, and over which rows; as short as the room asks."""
    rows = ROWS.findall(found["place"])[-1]
    told = found.groupdict()
    whole = found.group()
    ways = (f"{what} at beg of next {rows} rows", f"{what} at beg next {rows} rows")
    stop = "." if told.get("stop") else ""
    short = next((one for one in ways if len(one + stop) <= len(whole)), None)
    return whole if short is None else fitted(short + stop, whole)
