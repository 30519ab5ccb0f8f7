"""Totals on a line of their own below their row, "(24 sc)", "12 sc, 2 per side.", "You should have
18 stitches." -> in the row's line; length kept.

A line alone is a row of its own where rows have no labels: only below a labelled row, and with the
next row's label, an empty line or nothing behind it, is it the row's total.
"""

from __future__ import annotations

import re

_UNIT = (
    r"(?:[shd]{1,2} ?c|tr ?c?|htr|dtr|sts?|stitches|loops|spaces|sps|shells|fans|clusters|groups"
    r"|v-sts|petals|(?:half |single |double |treble )*(?:crochets?|doubles|trebles|singles))\b"
)
_SIZES = r"(?:[ ]?[(\[][\d,:;/ -]+[)\]])?"
_TOLD = (
    r"(?:(?:at the end,? )?(?:(?:so|now|there|you|we|i)(?: |(?=')))*"
    r"(?:should |will |'ll |must |ought to )?(?:now |then )?"
    r"(?:have|has|be|are|is|having|end(?: up)?(?: with)?)"
    r"|(?:stitch|st\.?|sts|total) ?(?:count|total)?|total|count"
    r"|(?:(?:this|that|it|which) )?(?:makes?|making|gives?|giving|leaves?|leaving)"
    r"(?: you)?(?: with)?)"
    r"[ ]?[:=]?[ ](?:now |a total of |in all |exactly |got )?"
)
_BRACKET = (
    rf"[(\[{{][ ]?(?:=[ ]?|{_TOLD})?\d{{1,4}}{_SIZES}"
    rf"(?:[ ]?{_UNIT}[^\n()\[\]{{}}]{{0,60}})?[)\]}}]"
    r"(?:[.]?[ ](?:\(|- ?see|see|mark|photo|pic|note|check|count|well|good|easy|do not|don't)"
    r"[^\n]{0,40})?"
)
_WORDS = (
    rf"(?:{_TOLD}|[=—-]+>?[ ]*)\d{{1,4}}{_SIZES}(?:[ ]{_UNIT}[^\n()\[\]]{{0,60}})?"
    rf"|\d{{1,4}}{_SIZES}[ ]{_UNIT}(?:,?[ ](?:in all|altogether|total|remain|left"
    r"|(?:at|by) the end[^\n]{0,20})"
    rf"|[ ]?[,;:—-][ ]?\d{{1,3}}(?:[ ]{_UNIT})?[ ](?:on |in |to |along )?(?:each|per|a|every)\b"
    r"[^\n]{0,30})?"
)
_ANNOUNCED = (
    r"(?P<announced>(?:(?:(?:to |now |your )*check(?:point)?|result|now|tally|stitches"
    r"|(?:now )?(?:count|check) (?:them|your (?:count|stitches|sts))|(?:at the )?end"
    r"|(?:stitch |st )?count|total|sts)[ ]?[:=—–-]|makes|(?:here you )?have|you should count)[ ]+)"
    r"\(?(?P<list>\d{1,4}(?:[ ][a-z][a-z-]*){0,3}(?:(?:,|,? and|,? plus|[ ]\+)[ ]\d{1,4}"
    r"(?:[ ][a-z][a-z-]*){1,3}){0,3})\)?(?P<talk>[.!]?[ ]*(?:[ ](?!\d)[^\n\d]{1,60})?)"
)
"""A line that says by its first word that it is for counting: "Check: 8 petals, 56 stitches."."""
ALL_STITCHES = re.compile(r"\d+ (?:sts|stitches)\b", re.IGNORECASE)
"""Among other kinds the number of them all."""
WORKS = re.compile(
    r"\b(?:in|into|over|through)\s+(?:the\s+)?(?:next|each|same|first|last|following|ring|top)\b"
    r"|\b(?:repeat|rep|times|inc|dec|skip|sk|miss|turn|join|yo|k\d|p\d|ch \d+(?! ?sp))\b|\*",
    re.IGNORECASE,
)
"""What a total does not say."""
_LABEL = r"\W{0,4}(?:(?:row|rnd|round|step|r)s?\.? ?\d|\d{1,3}(?:st|nd|rd|th)\b|\d{1,3}[.:)])"
BELOW = re.compile(
    rf"(?P<row>^{_LABEL}[^\n]*(?:\n(?![ \t]*\n|{_LABEL})[^\n]+){{0,9}}?)"
    r"(?P<gap>\n(?:[ \t]*\n)?[ \t]*(?:[-•*][ ])?)"
    rf"(?P<total>(?:{_ANNOUNCED}|{_BRACKET}|{_WORDS})[ \t]*[.!]?[ \t]*)"
    rf"(?=\n[ \t]*(?:\n|{_LABEL})|\s*\Z)",
    re.IGNORECASE | re.MULTILINE,
)


def totals_above(text: str) -> str:
    """The text with such totals in their rows' lines; any other text as it is."""
    return BELOW.sub(_in_its_row, text)


def _in_its_row(found: re.Match[str]) -> str:
    total = found["total"]
    if WORKS.search(total):
        return found.group()
    row, gap = found["row"], found["gap"]
    told = total.lstrip()[:1] in "([{" or found["announced"]
    if not told and row.rstrip()[-1:] not in ".;:!)]":
        # A sentence that goes on: "until there are / 24 sts."
        return found.group()
    if found["announced"]:
        all_of_them = ALL_STITCHES.search(found["list"])
        total = f"({all_of_them.group() if all_of_them else found['list']})".ljust(len(total))
    return row + " " * len(gap) + total
