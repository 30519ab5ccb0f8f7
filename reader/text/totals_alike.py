"""Text -> the text with "=" before the totals that its rows all end with in a manner of their own,
"/24/", "*24*", "__ 24 sts", ", 24 sts", "dec x6 6", "[tot 24]", "... 24", "ending with 24 sts";
length kept.

One such ending alone may be work ("sc in next 24 sts"): most rows of a piece must end so, each
with a number behind words that end a row.
"""

from __future__ import annotations

import re
from itertools import pairwise

LABEL = re.compile(
    r"[ \t>*•-]*[\[(#]?(?:(?:rnds?|rns?|rounds?|rows?|rds?|step)(?=[\s.\d#])|R(?=[ .]?\d)"
    r"|\d{1,3}(?:st|nd|rd|th)?[ ]?[.):-]|(?<=#)\d|\d{1,3}(?:st|nd|rd|th)? (?:row|rnd|round))",
    re.IGNORECASE,
)
"""A line that begins a row."""
BLANK = re.compile(r"\n[ \t]*\n")
_MORE = r"(?:[ ]?\([\d,;: ]+\))?"
_UNITS = r"(?:sts?|stitches|total(?: sts?| stitches)?)"
_COUNTED = rf"(?:{_UNITS}|[shd]{{1,2}}c|h?tr|single crochets?|double crochets?)"
_TELLS = r"(?:stitch |st )?(?:count|total(?: sts| stitches)?|tot|stitches|sts)"
"""What may name the number before it stands."""
_OVER = (
    r"(?:[)\]*]|[)\]] ?\*? ?\d{1,2}|\bx ?\d{1,2}|\bMR,? \d{1,2}|\b\w{2,3}2tog|\b\d{1,2} times"
    r"|\b(?:twice|together|tog|ring|circle|loop|MR|mr|across|around|over|even|end|all|join|turn|ea"
    r"|each|st|sts|stitch|rnd|round|row|inc|dec|k2tog|ssk"
    r"|(?<![,;*]\s)(?<!\b(?:and|end)\s)(?<!\b(?:with|then)\s)(?<!\bending\s)(?:knit|purl|plain))"
    r"|(?<=\d )(?:[sd]c|hdc|tr))"
)
"""Words that a row may end with."""
ENDINGS = tuple(
    re.compile(rf"{shape}[ ]*\.?[ ]*$", re.IGNORECASE)
    for shape in (
        rf"(?P<lead>/)(?P<n>\d{{1,4}}{_MORE})(?:[ ]?{_UNITS})?/",
        rf"(?<=[.,;)\]] )(?P<lead>[cntsCNTS][:.=]? ?)(?P<n>\d{{1,4}}{_MORE})",
        rf"(?<=\s)(?P<lead>\*)(?P<n>\d{{1,4}}{_MORE})(?:[ ]?{_UNITS})?\*",
        rf"(?<=\s)(?P<lead>[-—])(?P<n>\d{{1,4}}{_MORE})(?:[ ]?{_UNITS})?[-—]",
        rf"(?P<lead>[|~]|(?<=\s)__+)[ ]*(?P<n>\d{{1,4}}{_MORE})(?:[ ]?{_UNITS})?[|~]?",
        rf"(?P<lead>,)[ ]*(?P<n>\d{{1,4}}{_MORE})[ ]?{_UNITS}",
        r"(?:[^\d\s(]|[x*×)\]] ?\d{1,2})[ ]?(?P<lead>\()(?P<n>\d{1,4}(?:,[ ]?\d+)*)\)"
        rf"[ ]?{_UNITS}",
        rf"(?P<lead>\()(?P<n>\d{{1,4}}{_MORE})[ ](?:total {_UNITS}|in total|total)\)",
        r"(?<=\s)(?P<lead>[(\[{<]?(?:for |making |giving |makes |gives |with )?(?:an? |the )?"
        rf"{_TELLS}"
        rf"(?: of| is| now)?[ ]?[:=.]?)[ ]*(?P<n>\d{{1,4}}{_MORE})(?:[ ]?{_COUNTED})?[)\]}}>]?",
        rf"(?P<lead>[.,;]? (?:(?:end|finish)(?:s|ing)? (?:up )?with|(?:until|till) (?:you have"
        rf"|there are)))[ ](?P<n>\d{{1,4}}{_MORE})[ ]?{_UNITS}",
        rf"(?P<lead>(?<=\s)(?:[#Σ«‹<~✓✔→⇒/]|::|\(\(|=(?=[^\n=]+=))|(?:…|\.{{2,}}))"
        r"[ ]*"
        rf"(?P<n>\d{{1,4}}{_MORE})(?:[ ]?{_COUNTED})?[ ]?(?:[»›>=~✓✔/]|\)\))?",
        rf"(?P<lead>[.;])[ ]+(?P<n>\d{{1,4}}{_MORE})(?:[ ]?{_COUNTED})?[ ]?[✓✔✅!]",
        rf"(?<=\w)(?P<lead>:)[ ]*(?P<n>\d{{1,4}}{_MORE})(?:[ ]?{_UNITS})?",
        rf"{_OVER}(?P<lead>[ \t])[ \t]*(?P<n>\d{{1,4}})(?:{_MORE}[ ]?{_UNITS})?",
    )
)
LEAST = 3
"""Rows that must end alike, and two thirds of all that end in a figure."""
FIGURE_LAST = re.compile(r"\d[^\d\n]{0,12}$")
ONLY_LABEL = re.compile(r"(?:^|\n)[^\n:]{0,9}\d[ ]?[:.)]\D{0,12}$")
"""The figure of a short row is its label's: "Rows 33-35: knit."."""
NAMES_ROW = re.compile(
    r"(?:\b(?:as|like|per|for|in|rep(?:eat)?\.?|see|follow|copy|use|same|ditto|another)|[=:.])\s+"
    r"(?:rows?|rounds?|rnds?|rds?|R)\s?#?\d+\s*\.?\s*$", re.IGNORECASE,
)
"""The figure of a row that is called back: "Row 7: as row 2"."""
LONGEST = 60
"""Characters at a row's end that are looked at."""


SIZES = re.compile(r"\d ?(?:[/|;,<~]|\.{3}) ?\d+ ?$|(?<!\w)\(\d+\)(?: ?\d+ ?)?$")
"""Before a mark: the number behind it is that of one size more, "64 / 72 / 80"."""
USUAL = re.compile(
    r"[(\[{] ?=? ?\d[\d,;:/ ]{0,30}(?:sts?|stitches|[shd]{1,2}c|tr)? ?[)\]}]\.?$", re.IGNORECASE
)
"""A total as most print it."""


def totals_alike(text: str) -> str:
    """The text with such totals marked: "dec x6 6" is "dec x6=6"."""
    starts = _rows(text)
    if len(starts) < LEAST:
        return text
    ends = [_end(text, start, after) for start, after in pairwise([*starts, len(text)])]
    lasts = [(max(0, end - LONGEST, start), end) for start, end in zip(starts, ends, strict=True)]
    told = [
        (a, text[a:b]) for a, b in lasts
        if FIGURE_LAST.search(text, max(a, b - 14), b)
        and not (ONLY_LABEL.search(text[a:b]) or NAMES_ROW.search(text, a, b))
    ]
    odd = [(a, last) for a, last in told if not USUAL.search(last)]
    for shape in ENDINGS if len(odd) >= LEAST and 3 * len(odd) >= 2 * len(told) else ():
        found = [
            (a, one) for a, last in odd
            if (one := shape.search(last)) and not SIZES.search(last, 0, one.start("lead"))
        ]  # fmt: skip
        if len(found) < LEAST or 3 * len(found) < 2 * len(told):
            continue
        out = list(text)
        for a, one in found:
            _mark(out, a, one)
        for a, line in _lines_behind(text, starts, {a for a, _ in found}):
            one = shape.search(line)
            if one and one["lead"][:1].isalpha():
                _mark(out, a, one)
        return "".join(out)
    return text


def _lines_behind(text: str, starts: list[int], taken: set[int]) -> list[tuple[int, str]]:
    """The ends of the first lines of rows that another line follows, as far as they are looked at:
    the total stands before what is done behind the row.
    """
    found: list[tuple[int, str]] = []
    for start in starts:
        end = text.find("\n", start)
        end = len(text) if end < 0 else end
        a = max(start, end - LONGEST)
        if a not in taken:
            found.append((a, text[a:end]))
    return found


def _rows(text: str) -> list[int]:
    """Where the lines begin that begin a row."""
    starts, at = [], 0
    for line in text.split("\n"):
        if LABEL.match(line):
            starts.append(at)
        at += len(line) + 1
    return starts


def _end(text: str, start: int, after: int) -> int:
    """Where the row that begins at `start` ends: before a blank line or the next row."""
    blank = BLANK.search(text, start, after)
    end = blank.start() if blank else after
    return start + len(text[start:end].rstrip())


def _mark(out: list[str], at: int, one: re.Match[str]) -> None:
    lead, last = one.span("lead"), one.end("n")
    out[at + lead[0] : at + lead[1]] = "=".ljust(lead[1] - lead[0])
    out[at + last : at + one.end()] = " " * (one.end() - last)
