"""Whose stitches they are, turned to spaces: "knit across 21 front sts" reads as "knit across 21
sts", length kept.
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED

PARTS = (
    r"front|back|sleeve|body|heel|sole|thumb|neck|shoulder|centre|center|middle|gusset|hand|palm|arm"
    r"|foot|underarm|armhole|raglan|yoke|border|edge|edging|side|collar|hood|finger|brim|crown"
    r"|background|flap|strap|pocket|head|leg|toe|cuff|top|bottom|right|left"
)
OF_A_PART = re.compile(
    rf"(?<=[\d)\]])(?P<first>\s+)(?P<part>(?:(?:{PARTS})\s+){{1,2}})(?=(?:sts?|stitch(?:es)?)\b)"
    rf"|(?P<number>\b(?:{SPELLED})\s+)(?P<named>(?:(?:{PARTS})\s+){{1,2}})(?=(?:sts?|stitch(?:es)?)\b)",
    re.IGNORECASE,
)


SHADE = re.compile(r"\b(?:Lt|Dk|Med)\.?(?=\s+[A-Z][a-z])")
FOR_ALL = re.compile(r"\(\s*(?:for\s+)?all\s+sizes\s*\)", re.IGNORECASE)


MORE_AT_END = re.compile(
    r"(?P<lead>\bend(?:ing|s)?(?:\s+with)?\s+(?:k|p|knit|purl)\s?\d+)"
    r"(?P<more>\s+(?:more|extra|additional)(?:\s+(?:sts?|stitches))?\b)", re.IGNORECASE
)
""" "Ending with K 2 more sts": two, behind the last repeat."""
FABRIC_TOLD = re.compile(
    r"(?P<name>\b(?:st|stitch|stockinette?|garter|seed|moss|ribb?(?:ing)?|stst|ss)\.?,?)"
    r"(?P<told>\s*\((?:[^()*]{0,60}\b(?:rows?|rnds?|rounds?|alternate(?:ly)?)\b[^()*\d]{0,40}"
    r"|[^()*\d]{0,30}\b(?:RS|right side|every)\b[^()*\d]{0,40})(?:[^()*]{0,60})\))",
    re.IGNORECASE,
)
"""How a fabric is worked, told behind its name: "stocking stitch (knit 1 row, purl 1 row)"."""
SHAPES = re.compile(
    r"\b(?:inc|dec|cast|bind|bo\b|\d tog|beg|at each|row \d|rows? of)", re.IGNORECASE
)


def without_asides(text: str) -> str:
    """The text without shades of colours, that look like stitches ("Lt. Navy"), without "(all
    sizes)", "more" behind a row's last stitches and what fabrics are; length kept.
    """
    text = FABRIC_TOLD.sub(_only_named, text)
    text = SHADE.sub(lambda found: " " * len(found.group()), text)
    text = MORE_AT_END.sub(lambda found: found["lead"].ljust(len(found.group())), text)
    return FOR_ALL.sub(lambda found: _ended(found, text), text)


def _only_named(found: re.Match[str]) -> str:
    """The fabric's name; the whole where the bracket tells more than how it is worked."""
    told = found["told"]
    return found.group() if SHAPES.search(told) else found["name"] + " " * len(told)


def _ended(found: re.Match[str], text: str) -> str:
    """Spaces, and the stop that was left out where a new sentence begins behind the bracket."""
    blank = re.sub(r"\S", " ", found.group())
    return "." + blank[1:] if re.match(r"\s+[A-Z]", text[found.end() :]) else blank


def without_part_nouns(text: str) -> str:
    """The text without them; any text goes in, its length stays."""
    return OF_A_PART.sub(lambda found: _unless_goal(found, text), text)


UNTIL = re.compile(r"\b(?:until|till)\b[^.;]{0,40}$", re.IGNORECASE)
OWN = re.compile(r"\b(?:thumb|gusset)\b", re.IGNORECASE)


def _unless_goal(found: re.Match[str], text: str) -> str:
    """The words blanked, but where a goal is told for a thumb alone: "until there are 13 thumb
    sts".
    """
    before = text[max(0, found.start() - 60) : found.start()]
    if OWN.search(found.group()) and UNTIL.search(before):
        return found.group()
    return _blanked(found)


def _blanked(found: re.Match[str]) -> str:
    kept = found.group("number") or ""
    return kept + re.sub(r"\S", " ", found.group()[len(kept) :])
