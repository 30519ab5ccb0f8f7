"""Changes told of rows by their numbers: "work to the 13th row, increasing at the beginning of the
3d, 6th and 9th", "knit 10 rows, decreasing 1 st at each end of rows 4 and 8", "inc once in the 5th
row" -> AtRows.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from reader.pattern.changes import BOTH_ENDS
from reader.terms.numbers import word_number

_ROWS = r"(?:rows?|rnds?|rounds?)"
_NTH = r"\d{1,3}(?:st|nd|rd|th|d)"
_AND = r"(?:,? (?:and|&) |, )"
_LIST = (
    rf"(?:{_NTH}(?:(?:{_AND}{_NTH})+(?: {_ROWS}|(?=[.;,]|$))| {_ROWS})"
    rf"|{_ROWS} \d{{1,3}}(?:{_AND}\d{{1,3}})+)"
)
TOLD = re.compile(
    rf"\b(?P<way>inc|dec|narrow|widen|tak\w+ in)(?:reas(?:e|es|ing)|ing)?\.?"
    r"(?: (?:by )?(?P<n>\d|one|two|three|a|once))?(?: (?:sts?|stitch(?:es)?))?"
    r"(?P<where>(?: (?!times|every|until|till)[a-z]+){0,6}?)"
    rf" (?:of|on|in|at) (?:the )?(?P<rows>{_LIST})(?P<how>[^.;]*)",
    re.IGNORECASE,
)
GOES_ON = re.compile(r"\b(?:every|foll\w*|until|till|times)\b", re.IGNORECASE)
"""Behind the rows named, these tell of others."""
LEADS = re.compile(
    r"(?:^\W*|(?<=[.;:,] ))(?:(?:then|now|from this point|from here|next) )*"
    r"(?:work|knit|continue|cont\.?|proceed|go on|keep on|carry on|purl)\b"
    r"(?:[^.;\d]{0,50}?\b(?:until|till|to)\b[^.;\d]{0,30}?"
    rf"(?:(?P<upto>\d{{1,3}})(?:st|nd|rd|th|d) {_ROWS}|(?P<all>\d{{1,3}}) {_ROWS})"
    rf"|[^.;\d]{{0,40}}?\b(?P<many>\d{{1,3}}) (?:more )?(?:plain )?{_ROWS}|[^.;\d]{{0,30}}?(?=,))"
    r"(?:(?!\binc|\bdec|\bnarrow|\bwiden|\btak)[^.\d]){0,40}$",
    re.IGNORECASE,
)
"""What stands before such a change: how far the rows go."""


@dataclass(frozen=True, slots=True)
class AtRows:
    """step: stitches gained (or lost) in each of the rows named. upto: the number of the last row.
    many: how many rows in all, None where not told. start, end: where the words stand.
    """

    step: int
    named: tuple[int, ...]
    upto: int | None
    many: int | None
    start: int
    end: int


def at_rows(words: str) -> AtRows | None:
    """The change at rows that are named one by one; None where the words (on one line, numbers in
    figures) tell of none.
    """
    told = TOLD.search(words)
    lead = LEADS.search(words[: told.start()]) if told else None
    if told is None or lead is None or GOES_ON.search(told["how"]):
        return None
    said = (told["n"] or "1").lower()
    each = int(said) if said.isdigit() else word_number(said) or 1
    each *= 2 if BOTH_ENDS.search(told["where"] + " of") else 1
    gains = told["way"].lower() in ("inc", "widen")
    many, upto = lead["many"], lead["upto"] or lead["all"]
    return AtRows(
        each if gains else -each, tuple(int(one) for one in re.findall(r"\d+", told["rows"])),
        int(upto) if upto else None, int(many) if many else None, lead.start(), told.end(),
    )  # fmt: skip
