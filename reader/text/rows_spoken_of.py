"""Knitting text -> the same text, length kept, with rows that a sentence speaks of put behind their
label: "The 5th to 10th rounds are worked in the same way" as "5th to 10th rounds: in the same
way", "Do the 33rd and 34th rows like the 31st"; and a plain row told to lie between all others
as "Every other round: knit".
"""

from __future__ import annotations

import re

from reader.terms.numbers import ORDINALS, TENTHS
from reader.text.sought import Sought

_WORD = rf"(?:(?:twenty|thirty|forty|fifty)[ -])?(?:{'|'.join([*ORDINALS, *TENTHS])})\b"
_NTH = rf"(?:\d{{1,3}}(?:st|nd|rd|th|d)\b|{_WORD})"
_ROWS = r"(?:rows?|rounds?|rnds?)"
_BEGINS = r"(?P<at>(?:^|(?<=[.;:!]\s)|(?<=\n))[ ]*)"
_DONE = r"(?:worked|knitted|knit|done|made|purled)"
_AS = (
    r"(?:(?:exactly|just)\s+)?(?:like|as|the\s+same|similarly|alike"
    r"|in\s+(?:the\s+same|like|this|a))\b"
)
SPOKEN_OF = Sought(
    ("row", "round", "rnd"),
    rf"{_BEGINS}(?:(?:then|now)\s+)?(?:(?:do|work|knit|make|repeat)\s+)?(?:from\s+)?(?:the\s+)?"
    rf"(?P<label>(?P<first>{_NTH})(?P<more>(?:\s*(?:,|,?\s*and|to|till|until|-|—)\s*(?:the\s+)?{_NTH})+)\s+"
    rf"(?P<rows>{_ROWS}))(?P<verb>(?:\s+inclusive,?)?(?:\s+(?:are|is)(?:\s+(?:to\s+be|all|both))*)?"
    rf"(?:\s+{_DONE})?)\s+(?=(?:{_AS}|the\s+(?:\w+\s+){{0,2}}(?:stitches|number)\s[^.;]{{0,80}}?"
    r"\bincreases?\s+by\b))",
    re.IGNORECASE | re.MULTILINE,
)
_PATTERN = r"(?:(?:pattern|fancy|open|lace|worked|such|of\s+these)\s+)?"
_PLAIN = rf"(?:(?:1|one|a)\s+plain\s+{_ROWS}|(?:1|one|a)\s+{_ROWS}\s+plain)"
BETWEEN_ALL = Sought(
    ("after", "between"),
    rf"{_BEGINS}(?:(?:after|between)\s+(?:every|each|all)\s+(?:of\s+)?(?:these\s+|the\s+)?{_PATTERN}"
    rf"(?P<rows>{_ROWS}),?\s+(?:knit|work|there\s+is|comes)\s+{_PLAIN}"
    rf"|(?:knit\s+|work\s+)?{_PLAIN}(?:\s+is)?(?:\s+(?:to\s+be\s+)?(?:{_DONE}|comes|lies))?\s+"
    rf"(?:after|between)\s+(?:every|each|all)\s+(?:of\s+)?(?:these\s+|the\s+)?{_PATTERN}"
    rf"(?P<rows2>{_ROWS}))(?=\s*[.;])",
    re.IGNORECASE | re.MULTILINE,
)
WHOLLY = Sought(
    ("ted", "led", "med"),
    rf"(?P<label>\b{_ROWS}(?:\s+\d{{1,3}})?(?:\s+(?:is|are))?\s*(?:[:.]|—|--?)?\s*)(?P<all>(?:(?:entirely"
    r"|all|wholly|quite)\s+)?(?:(?P<knit>knitted)|pearled)|(?:entirely|all|wholly|quite)\s+(?:purl|seam)ed)"
    r"(?:\s+(?:plain|throughout|across))*(?=\s*(?:[.;*]|$))",
    re.IGNORECASE | re.MULTILINE,
)
""" "5th row: Entirely knitted.": what the row is, in place of what is done."""


def rows_spoken_of(text: str) -> str:
    """The text so put; any text goes in."""
    text = WHOLLY.sub(_wholly, text)
    text = SPOKEN_OF.sub(_labelled, text)
    return BETWEEN_ALL.sub(_between, text)


def _wholly(found: re.Match[str]) -> str:
    room = len(found.group()) - len(found["label"])
    verb = "knit" if found["knit"] else "purl"
    ways = (f"{verb} to the end", f"{verb} to end", f"{verb[0]} to end", f"{verb[0]} plain", verb)
    said = next(one for one in ways if len(one) <= room)
    return found["label"] + said.ljust(room)


def _labelled(found: re.Match[str]) -> str:
    more = re.sub(r"\bthe\s+", "", found["more"], flags=re.IGNORECASE)
    rows = found["rows"] if found["rows"].lower().endswith("s") else f"{found['rows']}s"
    label = f"{found['at']}{found['first']}{more} {rows}"
    said = found.group().rstrip()
    if len(label) >= len(said):
        return found.group()
    # The mark stands where a word ends, so that what is behind it can be shown as it stands.
    return f"{label.ljust(len(said) - 1)}:".ljust(len(found.group()))


def _between(found: re.Match[str]) -> str:
    kind = "row" if (found["rows"] or found["rows2"]).lower().startswith("row") else "round"
    label, whole = f"{found['at']}Every other {kind}", found.group()
    ends = re.compile(r"\s").search(whole, len(label) + 1)
    if ends is None or len(whole) - ends.start() < len(" knit"):
        return whole
    return f"{label.ljust(ends.start() - 1)}: knit".ljust(len(whole))
