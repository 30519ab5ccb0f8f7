"""Stitches that come back from a holder, told in an aside: "K across all sts including those on the
holder", "pick up and P sts from 2nd st holder", put as "and K sts from holder" is; length kept.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

_HOLDER = (
    r"(?:(?:1st|2nd|3rd|first|second|third|other|both)\s+)?(?:(?:st|stitch)\s+)?holders?\b"
    r"|(?:waste|scrap)\s+yarn|(?:spare|extra)\s+needle|safety[- ]?pin|thread"
)
_FROM = rf"(?:left\s+|waiting\s+|held\s+)?(?:from|on|off)\s+(?:the\s+|a\s+)?(?:{_HOLDER})"
_HELD = rf"(?:(?:the|all|those|these)\s+){{0,2}}(?:sts?\s+|stitches\s+){{0,2}}{_FROM}"
PICKED_UP = Sought(
    ("pick", "take"),
    r"\b(?:pick|take)\s+up\s+and\s+(?:k(?:nit)?|p(?:url)?)\s+(?:across\s+)?"
    rf"(?:(?:the|all|those)\s+)*(?:sts|stitches)\s+(?P<held>{_FROM})",
    re.IGNORECASE,
)
INCLUDED = Sought(
    ("includ", "also", "and", "as well"),
    r"(?P<verb>\b(?:k(?:nit)?|p(?:url)?|work)\b)(?P<across>[^.;:*\d]{0,40}?)"
    r"(?P<lead>,?\s*(?:including|also(?:\s+(?:knit|purl|working))?|as well as|and(?:\s+also)?"
    r"(?:\s+(?:knit|purl|k|p|work)(?:\s+across)?)?)\s+)"
    rf"(?P<held>{_HELD})",
    re.IGNORECASE,
)


BACK_ON = Sought(
    ("needle", "dpn"),
    r"(?P<verb>\b(?:return|put|replace|divide|distribute|arrange)\b)"
    r"(?P<which>(?:\s+(?:the|these|all|held|waiting|remaining|rem))*)\s+"
    r"(?P<n>\d{1,3}(?:\s?[(\[][\d ,:;/-]+[)\]])?)(?P<kind>(?:\s+[a-z]+){0,2}?)\s+(?:sts|stitches)"
    r"(?P<from>(?:\s+(?:from|off|left|on|of|the|a|held|holders?|waste|scrap|yarn|back))*)"
    r"\s+(?:on|onto|on to|to|over|among|between)\s+"
    r"(?:(?:the|your|a set of|set of|\d|three|four)\s+)*"
    r"(?:dpns?|(?:double[- ]pointed\s+|working\s+|smaller\s+|larger\s+)?needles)(?=\s*[.,;])"
    r"(?P<stop>,(?=\s+(?:re)?(?:join|attach)\b))?",
    re.IGNORECASE,
)
"""Stitches that waited, back on the needles: "return the 12 held thumb sts to needles"."""
WAITED = re.compile(r"\b(?:held|thumb|sleeve|waiting|holders?|waste|scrap|back)\b", re.IGNORECASE)
NTH = re.compile(r"\b(?:1st|2nd|first|second|both)\b", re.IGNORECASE)


def held_told(text: str) -> str:
    """The text with them put so; any text goes in."""
    text = PICKED_UP.sub(
        lambda found: f"sl sts {found['held']}".ljust(len(found.group())), text
    )
    return INCLUDED.sub(_included, BACK_ON.sub(_back_on, text))


def _back_on(found: re.Match[str]) -> str:
    whole = found.group()
    waited = WAITED.search(whole) is not None or found["verb"].lower() == "return"
    told = f"{'P' if whole[0].isupper() else 'p'}lace {found['n']} sts on needles"
    told += "." if found["stop"] else ""
    return told.ljust(len(whole)) if waited and len(told) <= len(whole) else whole


def _included(found: re.Match[str]) -> str:
    verb = "p" if found["verb"].lower().startswith("p") else "k"
    nth = NTH.search(found["held"])
    which = nth.group().lower() + " " if nth else ""
    told = f", {verb} sts from {which}holder{'s' * (which == 'both ')}"
    room = len(found["lead"]) + len(found["held"])
    if len(told) > room:
        return found.group()
    return found["verb"] + found["across"] + told.ljust(room)
