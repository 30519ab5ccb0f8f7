"""Labels that lack their mark, "1 - Ch 13. Inc in ...", "R1 hdc in third ch", "Row 7   sc in ...",
"(3) sc in ...", get it, and a dash before a total is none of a range, "Rnd 7 - 36"; length kept.
"""

from __future__ import annotations

import re
from itertools import pairwise

_MORE = r"(?:[ ]?(?:-|to|,|&)[ ]?\d{1,3})?"
DASHED = re.compile(
    rf"^(?P<label>[ ]*(?P<first>\d{{1,3}}){_MORE}) [-—] (?=[A-Za-z(*\[\d])", re.MULTILINE
)
BRACKETED = re.compile(
    r"^(?P<label>[ ]*)\((?P<first>\d{1,3})\)(?:[ ]?(?:-|to|&|,)[ ]?\((?P<last>\d{1,3})\))?[ ]"
    r"(?=[A-Za-z(*\[\d])",
    re.MULTILINE,
)
BARE = re.compile(
    rf"^(?P<label>[ ]*(?:R|rnd|round|row|rd)s?[ ]?(?P<first>\d{{1,3}}){_MORE})(?P<gap>[ ]+)"
    r"(?=\d+ ?[a-z]|[a-z(*\[])(?!(?:to|and|through|of|is|are|in|for|has|have|on)\b)"
    r"(?![^:\n.]{0,40}:)",
    re.MULTILINE | re.IGNORECASE,
)
NAMED = re.compile(
    r"^(?P<label>[ ]*(?:next|last|final|set-?up|eyelet|foundation|border)[ ](?:row|rnd|round))"
    r"[ ]{2,}(?=\S)",
    re.MULTILINE | re.IGNORECASE,
)
"""Among such rows one with a name: "Last row   sc2tog"."""
LEAST = 3
"""Lines labelled so, one after the other from 1, that make them rows."""


def numbered(text: str) -> str:
    """The text with the mark behind each row's number put in, where its lines count on from 1."""
    if (" - " in text or " — " in text) and _counts_on(DASHED, text):
        text = DASHED.sub(lambda found: f"{found['label']}.  ", text)
    if _counts_on(BARE, text):
        text = NAMED.sub(lambda found: f"{found['label']}:".ljust(len(found.group())), text)
        text = BARE.sub(lambda found: f"{found['label']}:".ljust(len(found.group())), text)
    if _counts_on(BRACKETED, text):
        text = BRACKETED.sub(_without_brackets, text)
        text = CALLED_BACK.sub(_by_letter, text)
    return _no_ranges(text)


CALLED_BACK = re.compile(
    r"(?P<lead>\b(?:repeat|rep|as|like) )\((?P<first>\d{1,3})\)"
    r"(?:[ ]?(?P<dash>-|to|and|&)[ ]?\((?P<last>\d{1,3})\))?",
    re.IGNORECASE,
)
"""Such rows called back: "repeat (3)-(6)", "as (2)"."""


def _by_letter(found: re.Match[str]) -> str:
    last = f"{found['dash']}R{found['last']}" if found["last"] else ""
    return f"{found['lead']}R{found['first']}{last}".ljust(len(found.group()))


def _without_brackets(found: re.Match[str]) -> str:
    last = f"-{found['last']}" if found["last"] else ""
    return f"{found['label']}{found['first']}{last}.".ljust(len(found.group()))


LABELLED = re.compile(
    r"^[ ]*(?:R|rnds?|rounds?|rows?|rds?)[ ]?(?P<first>\d{1,3})"
    r"(?:(?P<gap>[ ]?)(?P<dash>[-—])[ ]?(?P<last>\d{1,3})\b(?P<end>[ ]?[:.)—-])?)?",
    re.MULTILINE | re.IGNORECASE,
)


def _no_ranges(text: str) -> str:
    """The text with a colon for the dash of "Rnd 7 - 36 in back loops", where the next line begins
    with row 8: the number behind it is a total.
    """
    if " -" not in text and " —" not in text:
        return text
    out = list(text)
    for one, after in pairwise(LABELLED.finditer(text)):
        if one["last"] is None or one["end"] or not one["gap"]:
            continue
        if int(after["first"]) == int(one["first"]) + 1 < int(one["last"]):
            out[one.start("dash")] = ":"
    return "".join(out)


def _counts_on(shape: re.Pattern[str], text: str) -> bool:
    firsts = [int(found["first"]) for found in shape.finditer(text)]
    if len(firsts) < LEAST or firsts[0] != 1:
        return False
    return all(a < b or b == 1 for a, b in pairwise(firsts))
