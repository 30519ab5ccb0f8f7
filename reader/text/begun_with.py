"""Knitting text -> the same text, length kept, with the stitches that a piece begins with as cast
on, however they are told: "c/on 40", "cast 40 on", "cast on your 40", "you need forty stitches on
the needle", "start with 40 sts", "40 st on the long needle, rib" -> "cast on 40 sts".
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED
from reader.text.sought import Sought

_LIST = r"(?:\s?[(\[][\d\s,;:/-]+[)\]]|(?:\s?(?:/|-|—|;)\s?\d{1,4})+)?"
_N = rf"(?P<n>(?<![\d.,/])\d{{1,4}}{_LIST}(?![\d%.]\d|\d)|\b(?:{SPELLED})\b)"
_STS = r"(?:\s?(?:sts?|stitches|stitch|loops|lps)\b\.?)"
_NEEDLE = (
    r"\s+(?:on|onto|on to|to|over|across)\s+(?:(?:the|your|a|my|one|two|four|both|these|this|that"
    r"|each|long|circular|straight|double|pointed|dp|size|no|us|\d[\d.,/]*\s?(?:mm)?|short|needle"
    r"|cm|inch|thin|fine|thick|larger|smaller|big|small)\.?[\s-]+){0,6}"
    r"(?:needles?|ndls?|pins|dpns?|circular)\b"
)
_MINE = (
    r"(?:(?:(?:i|we)(?:'ve)? (?:used|use|cast on|did|have|made|chose)|mine (?:is|was|has)|shown"
    r"|here|e\.?g\.?|for (?:this|the|mine) \w+):? )?"
)
"""What goes before the number of an author's own piece."""
CAST = Sought(
    ("cast", "c/", "c.", "co", "waste", "provisional", "scrap"),
    r"\b(?:"
    rf"c[/.]\s?on\b\s*[:=—-]?\s*{_N.replace('P<n>', 'P<a>')}{_STS}?"
    rf"|c\.\s?o\.\s*[:=—-]?\s*{_N.replace('P<n>', 'P<b>')}{_STS}?"
    rf"|co\s*[:=]\s*{_N.replace('P<n>', 'P<c>')}{_STS}?"
    rf"|co\s?(?P<d>\d{{1,4}})(?=sts?\b){_STS}"
    rf"|cast\s+(?:up\s+)?{_N.replace('P<n>', 'P<e>')}{_STS}?\s+on\b(?!\s+(?:the|a|each|at|to)\b)"
    rf"|cast(?:ing)?[ -]?on\s*[:,]?\s+(?:your|the|my|about|all|exactly|only|just)\s+"
    rf"{_N.replace('P<n>', 'P<f>')}{_STS}"
    rf"|casting[ -]on\s*[:=—-]\s*{_N.replace('P<n>', 'P<g>')}{_STS}?"
    rf"|(?:work\s+|make\s+)?(?:a|the)\s+cast[ -]?on\s+of\s+{_N.replace('P<n>', 'P<h>')}{_STS}?"
    r"|cast(?:ing)?[ -]on,?\s+(?:using|with|by|in)\s+[^.;:\d\n]{2,50}?,?\s+"
    rf"{_N.replace('P<n>', 'P<i>')}{_STS}"
    r"|cast[ -]on\s+(?:an?|any)\s+(?:even|odd|multiple)\b[^.;\n]{0,50}?[(:,—-]\s*"
    rf"{_MINE}{_N.replace('P<n>', 'P<j>')}{_STS}?(?:\s(?:shown|here|used|in mine))?(?:\)|(?=[.;,]))"
    r"|cast[ -]?on\s+(?:to|on|onto|on to)\s+(?:\w+\s+){1,3}(?:needles?|pins?),?\s+"
    rf"{_N.replace('P<n>', 'P<k>')}{_STS}"
    r"|cast[ -]on,\s(?:(?:rather|very|quite)\s)?\w+ly,\s"
    rf"{_N.replace('P<n>', 'P<l>')}{_STS}"
    r"|(?:remove|take out|undo|unpick|unravel|pull out)\s[^.;\n]{0,40}?"
    r"\b(?:waste|provisional|scrap)\b[^.;\n]{0,20}[;,.:]\s"
    rf"{_N.replace('P<n>', 'P<m>')}{_STS}{_NEEDLE}"
    r")",
    re.IGNORECASE,
)
BEHIND = Sought(
    ("cast",),
    rf"(?P<lead>(?:^|(?<=[.;:!\n]))[ ]*)(?:[^.;:\n\d]{{0,30}}\s)?{_N}{_STS}?\s+(?:are\s+|is\s+)?"
    r"cast[ -]on\b(?=\s*(?:[.;,!]|$|and\b|with\b|in\b|on\b))",
    re.IGNORECASE | re.MULTILINE,
)
_HOLDS = (
    r"(?:(?:you|we|i)(?:'ll|'ve| will| should| have| would)?\s+(?:now\s+|first\s+)?"
    r"(?:need|want|have|got|get|begin|start|use)(?:\s+(?:to (?:have|start with)|with|got))?"
    r"|have|get|put|place|take|lay|bring|make|set up|slip|string|start(?:ing)?(?:\s+off)?\s+with"
    r"|begin(?:ning)?\s+with|start(?:ing)?\s+(?:off\s+)?from)"
)
ON_NEEDLE = re.compile(
    rf"\b{_HOLDS}\s+(?:(?:a total of|your|the|about|an?)\s+)?{_N}{_STS}?{_NEEDLE}"
    r"(?:\s+to\s+(?:start|begin)(?:\s+with)?)?",
    re.IGNORECASE,
)
BEGIN_WITH = re.compile(
    rf"(?P<lead>(?:^|(?<=[.;:!\n]))[ ]*(?:(?:so|now|first|ok|okay|well),?\s+)?)"
    r"(?:(?:(?:we|you|i)\s+)?(?:start|begin|commence|go)(?:n?ing)?(?:\s+off)?\s+(?:it\s+)?(?:with|on)"
    r"|(?:you(?:'ll| will)?|we)\s+need|work(?:ed)? over|to (?:start|begin):?)"
    rf"\s+{_N}{_STS}(?:\s+cast on)?"
    r"(?=\s*[.,;!]|\s*$|\s+and\b|\s+in\b)"
    r"|(?P<lead2>(?:^|(?<=[.;:!\n]))[ ]*)(?:notch|strike|knock|beat|mount|dial|type|wind|nail|hit"
    r"|set|make|recruit|fold|lay|throw|put|open)"
    rf"(?:\s+(?:on|up))?\s+{_N.replace('P<n>', 'P<m>')}{_STS}"
    r"(?=\s*[.,;!(]|\s*$|\s+(?:and|in|on|with)\b)",
    re.IGNORECASE | re.MULTILINE,
)
FIRST = re.compile(
    rf"^(?P<lead>[ ]*){_N}{_STS}(?:{_NEEDLE})?(?=\s*(?:[,.;]\s+(?!\d+ rows)\S|[.]?$))",
    re.IGNORECASE | re.MULTILINE,
)
"""Stitches told at a line's start, with no verb at all."""
ANY_CAST = re.compile(
    r"\bcast(?:ing)?\b(?![ -]?on(?: method)?,? (?:put|place|get|have|lay|string)\b)"
    rf"[^.\n]{{0,60}}?(?:\d|\b(?:{SPELLED})\b)|\bco\s*\d", re.IGNORECASE
)
ROW_FIRST = re.compile(r"^\W*(?:(?:row|rnd|round)s?\s?\d|1st (?:row|round))", re.I | re.M)
HEADING = re.compile(r"[^\W\d][^\d.,;\n]{1,30}:?[ ]*\Z")
PICKED = re.compile(
    r"\b(?:pick(?:ed|ing)? up|needle|gauge|tension|measures?|(?:knit|knitted)(?! cast)|worked"
    r"|purled)\b",
    re.IGNORECASE,
)


def begun_with(text: str) -> str:
    """The text so put; any text goes in."""
    text = CAST.sub(lambda found: _said(found, next(one for one in found.groups() if one)), text)
    text = BEHIND.sub(lambda found: found["lead"] + _said(found, found["n"], found["lead"]), text)
    begun = ANY_CAST.search(text)
    if begun is None:
        for shape in (ON_NEEDLE, BEGIN_WITH, FIRST):
            found = shape.search(text)
            if found is not None and _may_begin(text, found):
                text = text[: found.start()] + _begun(found) + text[found.end() :]
                break
    return FIRST.sub(lambda found: _under_heading(found, text), text)


def _may_begin(text: str, found: re.Match[str]) -> bool:
    """Whether nothing is worked before, and the line speaks of no gauge."""
    line = text[text.rfind("\n", 0, found.start()) + 1 : found.start()]
    labels = ROW_FIRST.search(text)
    if labels is not None and labels.start() < found.start():
        return False
    return PICKED.search(line) is None


def _under_heading(found: re.Match[str], text: str) -> str:
    before = text[: found.start()].rstrip("\n")
    above = before[before.rfind("\n") + 1 :].strip()
    rest = text[found.end() : text.find("\n", found.end())]
    telegraphic = found.group().strip()[0].isdigit() and rest.lstrip()[:1] == ","
    if not telegraphic or HEADING.fullmatch(above) is None:
        return found.group()
    return _begun(found)


def _begun(found: re.Match[str]) -> str:
    groups = found.groupdict()
    lead = groups.get("lead") or groups.get("lead2") or ""
    return lead + _said(found, groups.get("n") or groups.get("m") or "", lead)


def _said(found: re.Match[str], number: str, lead: str = "") -> str:
    room = len(found.group()) - len(lead)
    said = f"cast on {number} sts"
    for short in (f"cast on {number}", f"co {number} sts", f"co {number}", f"co{number}"):
        said = said if len(said) <= room else short
    ends = "." if found.group().endswith(".") and len(said) < room else ""
    whole = found.group()[len(lead) :]
    return said.ljust(room - len(ends)) + ends if len(said) <= room else whole
