"""Knitting text -> the same text, length kept, with shaping rows told by how many they are put as
how often one is worked: "until 5 inc rows have been worked in all" as "5 times in all", "[work 7
rows, inc row] 5 times" as "inc row every 8th row 5 times".
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED, word_number
from reader.text.sought import Sought

_N = rf"(?:\d{{1,2}}(?:\s?[(\[][\d ,;:/-]+[)\]])?|{SPELLED})"
_ROWS = r"(?:rows|rounds|rnds)"
_SHAPING = r"(?:inc|dec|increase|decrease|shaping)\.?"
DONE = Sought(
    ("row", "round", "rnd"),
    rf"(?:\buntil (?:you have (?:worked )?)?|,? )(?P<n>{_N}) {_SHAPING} {_ROWS}"
    r"(?: (?:have been|are|were|had been))?"
    r"(?P<done> (?:worked|completed|done|made))?(?P<all> in (?:all|total)| altogether)?"
    r"(?=\s*[.;,(]|\s*$)",
    re.IGNORECASE | re.MULTILINE,
)
BETWEEN = Sought(
    ("row", "round", "rnd"),
    rf"[\[(]?\bwork (?P<w>{_N}) {_ROWS}(?: even| straight| plain)?,? (?:(?:then|and|work) )*"
    rf"(?:(?:an|a|the|one|1) )?(?P<kind>{_SHAPING}) (?P<row>row|round|rnd)[\])]?[,;]?\s+"
    rf"(?:(?:do|work|repeat) (?:this|these|that) )?(?P<m>{_N}) times"
    r"(?P<all> in (?:all|total)| altogether)?",
    re.IGNORECASE,
)


AGAIN = Sought(
    ("again",),
    rf"\bwork (?:this|that|the|the last) {_SHAPING} (?P<row>row|round|rnd) again\b",
    re.IGNORECASE,
)


def shaping_rows(text: str) -> str:
    """The text so put; any text goes in."""
    text = AGAIN.sub(lambda found: f"repeat this {found['row']}".ljust(len(found.group())), text)
    return BETWEEN.sub(_every, DONE.sub(_times, text))


def _times(found: re.Match[str]) -> str:
    """Only where it is said that they are worked, or that they are all."""
    if found["done"] is None and found["all"] is None:
        return found.group()
    lead = re.match(r",? ", found.group())
    told = f"{lead.group() if lead else ''}{found['n']} times in all"
    return told.ljust(len(found.group())) if len(told) <= len(found.group()) else found.group()


def _every(found: re.Match[str]) -> str:
    said = found["w"]
    apart = (int(said) if said.isdigit() else word_number(said) or 0) + 1
    ending = {2: "nd", 3: "rd"}.get(apart, "th")
    row = found["row"]
    told = f"{found['kind']} {row} every {apart}{ending} {row} {found['m']} times"
    short = apart > 1 and len(told) <= len(found.group())
    return told.ljust(len(found.group())) if short else found.group()
