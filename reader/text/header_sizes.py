"""The names of the sizes in what a pattern says of them above its rows: "Instructions are for 12;
changes for 14 and 16 are in brackets", "Available in sizes S, M, L", "Child (Woman, Man)".
"""

from __future__ import annotations

import re

from reader.text.size_names import SIZE_NAME

_NUMBER = (
    r"(?:\d{1,3}(?:\s?[/–—-]\s?\d{1,3})?(?:\s?(?:\"|”|in\b|inch(?:es)?\b|cm\b))?"
    r"(?!\s?(?:mm|g\b|m\b)))"
)
_ONE = rf"(?:{SIZE_NAME}|{_NUMBER})"
_MARK = r"(?:\s?[,;/|]\s?(?:(?:and|or|&)\s)?|\s(?:and|or|&)\s|\s?[–—]\s?|\s-\s)"
_LIST = rf"{_ONE}(?:{_MARK}{_ONE})*"
_IN_BRACKETS = rf"{_ONE}\s?[(\[]\s?{_LIST}\s?[)\]](?:\s?{_ONE}(?!\w))*"
_SIZED = r"(?:(?:the|a|size|sizes|ages?|smallest|chest)\s)*"
CHANGES = re.compile(
    rf"\bfor\s{_SIZED}(?P<first>{_ONE})(?:\ssizes?)?(?:\sonly)?[;,.:]?\s(?:with\s|and\s)?"
    rf"(?:the\s)?(?:changes|figures|numbers|alterations|larger sizes|those|sizes?)?\s?"
    rf"(?:for\s)?{_SIZED}[(\[]?(?P<more>{_LIST})[)\]]?(?:\ssizes?)?\s(?:(?:are|is|being|given)\s)*"
    r"(?:in|within|between)\s(?:the\s)?(?:round\s|square\s)?(?:parenthes[ie]s|brackets?|\(\s*\)|\[)",
    re.IGNORECASE,
)
"""The first size, and those whose changes stand in brackets."""
LISTED = re.compile(
    rf"^[^\w\n]*(?:(?:available|made|comes|written|knitted|worked|to fit|fits?|finished|garment|for"
    r"|three|two|four|five|six|in|to|pattern|instructions|is|are|\d)\s)*"
    r"(?:(?:sizes?|ages?|for|to fit|fits?)\b\s?[:=.–—-]?\s?)?"
    rf"(?P<list>{_IN_BRACKETS}|{_ONE}(?:{_MARK}{_ONE})+)"
    r"(?:\s?(?:years?|yrs?|months?|mos?|inch(?:es)?|ins?|cm|sizes?|chest|old)\b\.?)*\s?(?:[.;]|\n|$)",
    re.IGNORECASE | re.MULTILINE,
)
"""A line that lists them, whatever leads to it."""
OF_SIZES = re.compile(
    rf"\bfor\s(?:the\s)?sizes?\s(?P<list>{_ONE}(?:{_MARK}{_ONE})+)", re.IGNORECASE
)
"""Behind the numbers of a first list: "68, 88 or 108 sts for size S, M or L"."""
OF_SIZES_SAID = re.compile(r"\b(?:sizes?|ages?|for|fits?)\b", re.IGNORECASE)
ONE = re.compile(_ONE, re.IGNORECASE)
NEAR_TOP = 2_000
MOST = 12


def header_names(text: str) -> tuple[str, ...]:
    """The names, the first size first; () where the top of the text lists none."""
    top = text[:NEAR_TOP]
    changes = CHANGES.search(top)
    if changes is not None:
        return _apart([changes["first"], *ONE.findall(changes["more"])])
    for found in LISTED.finditer(top):
        names = _apart(ONE.findall(found["list"]))
        lettered = all(name[0].isalpha() for name in names)
        said = OF_SIZES_SAID.search(top, found.start(), found.start("list"))
        if len(names) > 1 and (said is not None or lettered):
            return names
    of_sizes = OF_SIZES.search(top)
    return _apart(ONE.findall(of_sizes["list"])) if of_sizes is not None else ()


def _apart(names: list[str]) -> tuple[str, ...]:
    """The names, () where one comes twice or they are too many."""
    told = tuple(" ".join(one.split()) for one in names)
    fine = len({one.lower() for one in told}) == len(told) <= MOST
    return told if fine else ()
