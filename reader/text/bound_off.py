"""Knitting text -> the same text, length kept, with binding off as patterns have it: "this time
cast them all off" as "          cast off all", "bind it off" as "bind off".
"""

from __future__ import annotations

import re

from reader.text.fitting import fitted
from reader.text.sought import Sought

_ALL = (
    r"(?:(?:all|every one|each) of (?:them|these|those|it)|everything|the lot|the whole lot"
    r"|the whole thing|(?:them|it|these|those)(?: all)?|all (?:the |these |your |remaining )*"
    r"(?:sts|stitches))"
)
AMID = Sought(
    ("off",),
    rf"\b(?P<verb>bind|cast)(?P<all> {_ALL})(?P<how>(?: loosely)?) off\b", re.IGNORECASE,
)
BEHIND = Sought(("off",), rf"\b(?P<verb>(?:bind|cast) off) {_ALL}(?= *(?:[.,;]|and\b|\n|$))",
                re.IGNORECASE)  # fmt: skip
THIS_TIME = Sought(
    ("time", "finish", "to end"),
    r"(?P<at>(?:^|(?<=[.;!] )))(?P<lead>(?:and |but |now |then )*(?:this time(?: (?:round|around))?"
    r"|the last time|to (?:finish|end)(?: off| the \w+)?),? )(?=(?:bind|cast) off\b)",
    re.IGNORECASE | re.MULTILINE,
)
NONE_LEFT = Sought(
    ("until", "till"),
    r"(?P<off>\b(?:bind|cast|binding|casting) off \d+[^.;:]{0,90}?)(?P<till> (?:until|till) )"
    r"(?:(?:all(?: of them)?(?: the)?(?: sts| stitches)?|they|the sts|the stitches)"
    r" (?:are|have been|have)(?: all)? (?:(?:worked|cast|bound|used|knitted) (?:off|up)|gone"
    r"|worked|used)|(?:no|none)(?: of them)?(?: more)?(?: sts| stitches)?"
    r"(?: (?:are|is|remain|remains|left|rem))+)",
    re.IGNORECASE,
)
""" "Cast off 7 sts at beg of next and every alt row until all are worked off"."""


BEGINNINGS_FIRST = Sought(
    ("off",),
    r"(?P<cap>\bat)\s(?P<where>(?:the\s)?beg(?:inning)?\.?\sof\s(?:the\s|each\sof\s"
    r"|each\sof\sthe\s)?"
    r"(?:next|following|foll)\s(?:\d+|two|four|six|eight)\s(?:more\s)?rows),?\s"
    r"(?P<off>(?:bind|cast)\soff)\s(?P<n>\d+(?:\s?[(\[][\d ,:;/-]+[)\]])?\s(?:sts?|stitches))"
    r"(?=\s*(?:[.,;]|and\b|\n|$))",
    re.IGNORECASE,
)
""" "At beg of next 2 rows bind off 5 sts": what is bound off behind where."""


_LEFT = r"(?:is|are)\s(?:still\s)?left(?:\sover)?|remains?|there\sis|'s\sleft|you\shave(?:\sleft)?"
WHAT_IS_LEFT = Sought(
    ("off",),
    rf"(?P<off>\b(?:bind|cast)\soff(?:\sloosely)?)\s(?:(?:all\s)?(?:what(?:ever)?|those|the\ssts"
    rf"|all)(?:\sthat)?\s?"
    rf"(?:{_LEFT})|everything\sleft|(?:all\s)?the\s(?:rest|others|remainder)"
    r"|(?:all\s)?(?:the\s|those\s)?(?:rem(?:aining)?\.?|last|other)\s(?:sts|stitches))"
    r"(?:\s?[,:;=—-]+\s?|\s?(?P<open>\())\s?(?:all\s)?(?P<n>\d{1,3}(?:\s?[(\[][\d ,:;/-]+[)\]]"
    r"|(?:[,/:-]\s?\d{1,3})+)?)"
    r"(?P<sts>\s(?:sts?|stitches)\b)?(?(open)\)|)(?=\s*(?:[.,;]|$|and\b))",
    re.IGNORECASE | re.MULTILINE,
)
""" "Cast off what is left, 6 sts"; "cast off the rest (7)"."""


def bound_off(text: str) -> str:
    """The text so put; any text goes in."""
    text = AMID.sub(_off, BEGINNINGS_FIRST.sub(_off_first, text))
    text = NONE_LEFT.sub(_to_none, text)
    text = BEHIND.sub(lambda m: f"{m['verb']} all".ljust(len(m.group())), text)
    text = WHAT_IS_LEFT.sub(lambda m: fitted(f"{m['off']} rem {m['n']} sts", m.group()), text)
    return THIS_TIME.sub(lambda m: " " * len(m.group()), text)


def _off_first(found: re.Match[str]) -> str:
    off = found["off"].capitalize() if found["cap"][0].isupper() else found["off"]
    return f"{off} {found['n']} at {found['where']}".ljust(len(found.group()))


def _off(found: re.Match[str]) -> str:
    whole = found.group()
    said = f"{found['verb']} off all{found['how']}"
    return (said if len(said) <= len(whole) else f"{found['verb']} off").ljust(len(whole))


def _to_none(found: re.Match[str]) -> str:
    said = f"{found['off']}{found['till']}0 sts rem"
    return said.ljust(len(found.group()))
