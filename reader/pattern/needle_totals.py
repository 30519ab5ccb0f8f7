"""Totals printed needle by needle: "27 on each side needle, 25 on the instep needle", "29 stitches
on the back needle, 76 in all" -> the total of all, and where partial numbers stand.
"""

from __future__ import annotations

import re

from reader.pattern.totals import Printed
from reader.terms.numbers import SPELLED, word_number

_N = rf"(?P<n>\d+|{SPELLED})\s*(?:sts?\b|stitches|loops)?"
_WHICH = (
    r"(?:the |your |each |a |of |these |those )*(?P<which>each side|each of the others?|each other"
    r"|each|side|instep|heel|back|front|1st|2nd|3rd|4th|first|second|third|fourth|sole|others?)\b"
)
PART = re.compile(
    rf"\b{_N}\s*(?:left |remaining |now |will be |are |should be )*(?:in|on) {_WHICH}"
    r"(?! (?:(?:st|stitch) )?holder)"
    r"(?:[\w ]{0,12}?(?:needles?|pins?|rib))?",
    re.IGNORECASE,
)
IN_ALL = re.compile(rf"\b{_N}\s*(?:left |now )?(?:in all|altogether)\b", re.IGNORECASE)
SAID = re.compile(
    r"\b(?:have|will be|are left|remain|having|leaves?|leaving|gives? you|left on"
    r"|there (?:are|will|should|ought)|ought to (?:have|be))\b",
    re.IGNORECASE,
)


def by_needle(text: str) -> tuple[list[Printed], str]:
    """Totals said needle by needle, and the text with them blanked out."""
    found: list[Printed] = []
    for sentence in re.finditer(r"[^.;]+", text):
        words = sentence.group()
        said = SAID.search(words) or lists_needles(words)
        if not said or re.search(r"\b(?:until|till)\b", words[: said.start()], re.IGNORECASE):
            continue
        parts = list(PART.finditer(words))
        whole = IN_ALL.search(words)
        if not parts and not whole:
            continue
        spots = [*parts, *([whole] if whole else [])]
        start = sentence.start() + min(one.start() for one in spots)
        end = sentence.start() + max(one.end() for one in spots)
        total = _value(whole) if whole else _sum(parts)
        found.append(Printed(start, end, (total or 0,), "", each=total is None))
        text = text[:start] + " " * (end - start) + text[end:]
    return found, text


LISTED = re.compile(
    rf"\(\s*{_N}\s*on\s+(?:the\s+)?(?:1st|first)\b[^()]{{0,24}}needles?\b[^()]*"
    r"\b(?:2nd|second|others?|each of)\b[^()]*\)",
    re.IGNORECASE,
)
"""A bracket that lists what each needle has: "(48 sts on first needle, 24 on 2nd and 3rd)"."""
NTH = re.compile(r"\d(?:nd|rd|th)\b|second|third|fourth", re.IGNORECASE)
AND_ON = re.compile(r"(?:\s*(?:,|\band|&)\s*(?:2nd|3rd|4th|second|third|fourth)\b)+", re.IGNORECASE)


def lists_needles(words: str) -> re.Match[str] | None:
    """The bracket that lists so, where the words hold one."""
    return LISTED.search(words)


def _value(one: re.Match[str]) -> int:
    said = one.group("n")
    return int(said[:6]) if said.isdigit() else word_number(said) or 0


def _sum(parts: list[re.Match[str]]) -> int | None:
    """All needles together, None where only some are told of."""
    if len(parts) < 2:
        return None
    return sum(_value(one) * _needles(one) for one in parts)


def _needles(one: re.Match[str]) -> int:
    """On how many needles so many stitches lie: "6 on 2nd and 3rd needles"."""
    if "each" in one.group("which").lower():
        return 2
    more = AND_ON.match(one.string, one.end("which"))
    return 1 + len(NTH.findall(more.group())) if more else 1
