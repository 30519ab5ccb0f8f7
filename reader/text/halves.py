"""A knitted row told by its halves, "knit half the row, narrow, knit the other half" -> "knit to
middle, narrow, knit to end"; and stitches left over that are taken as "these": "until two are left;
knit these together" -> "knit 2 together". Length kept.
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED, word_number
from reader.text.sought import Sought

_KNIT = r"\b(?P<verb>knit|purl|pearl|seam|k|p|work|rib)\s+"
_ROW = r"(?:row|round|rnd|stitches|sts|needle|number)"
FIRST_HALF = Sought(
    ("half",),
    rf"{_KNIT}(?P<half>(?:over |across )?(?:the )?(?:one |first )?half (?:of )?(?:the|your"
    rf"|this) {_ROW})"
    r"(?=\s*,[^.;]{2,90}\b(?:other half|rest|remainder|remaining half|to (?:the )?end)\b)",
    re.IGNORECASE,
)
OTHER_HALF = re.compile(
    rf"{_KNIT}(?P<half>(?:over |across )?the (?:other|second|remaining) half(?: of (?:the|your"
    rf"|this) {_ROW})?)"
    r"(?=\s*[.;,]|\s*$)",
    re.IGNORECASE,
)
LEFT = Sought(
    ("together", "tog"),
    rf"\b(?:until|till)\b[^.;,]{{0,30}}?\b(?P<n>[2-9]|(?:{SPELLED}))\b[^.;,]{{0,30}}?[.;,]\s+"
    r"(?:(?:and|then)\s+)*(?:knit|k|purl|take|work|narrow)\s+"
    r"(?P<these>these|them|both|all|the (?:two|three|four|last)(?: stitches)?)"
    r"(?=\s+tog(?:ether)?\b)",
    re.IGNORECASE,
)
""" "Until but two are left; knit these together"."""

NEAR = 120
"""Letters behind the first half in which the other is told."""


def halves_told(text: str) -> str:
    """The text with them put so; any text goes in."""
    if LEFT.may_stand(text):
        text = LEFT.sub(_so_many, text)
    if not FIRST_HALF.may_stand(text):
        return text
    out, at = [], 0
    for first in FIRST_HALF.finditer(text):
        second = OTHER_HALF.search(text, first.end(), first.end() + NEAR)
        for found, there in ((first, "to middle"), (second, "to end")):
            if found is not None and found.start() >= at:
                told = f"{found['verb']} {there}".ljust(len(found.group()))
                out += [text[at : found.start()], told]
                at = found.end()
    return "".join([*out, text[at:]])


def _so_many(found: re.Match[str]) -> str:
    number = int(found["n"]) if found["n"].isdigit() else word_number(found["n"]) or 0
    if not 1 < number < 10:
        return found.group()
    return found.group()[: -len(found["these"])] + str(number).ljust(len(found["these"]))
