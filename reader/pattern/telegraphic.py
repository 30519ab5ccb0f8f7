"""Sentences without a label that change the stitches, told as shortly as a telegram: "Kfb in every
st: 80.", "Put 10 on a thread: 30."
"""

from __future__ import annotations

import re

from reader.pattern.labels import Mark
from reader.terms.numbers import SPELLED

_UNIT = r"(?:\s*(?:sts?|stitches))?"
CHANGE_FIRST = re.compile(
    r"\W*(?:(?:then|now|and|next)\W+)*(?:[kp]fb|m1[lrp]?|make 1|(?:in|de)c(?:rease)?|ss[kp]|k2tog"
    r"|narrow|widen|take in|lose|halve|double)\b"
    r"(?! (?:rows?|rounds?|rnds?|sts?|stitch(?:es)?|method|knitting|yarn|pointed|thread|strand"
    r"|wool|check)\b)"
    r"(?=[^:\n]*\s(?:\d|one\b|two\b|each\b|every\b|all\b|evenly|the st|after\b|in\b|to\b))",
    re.IGNORECASE,
)
"""A sentence that begins with a change."""
WITH_TOTAL = re.compile(
    r"\b(?:tog(?:ether)?|every|each|put|leave|slip|holder|thread|pin|cast|bind|pick|take|round|row"
    r"|all)\b[^\n]*?"
    rf"(?:[:=]\s*\d{{1,4}}{_UNIT}|[(\[]\d{{1,4}}{_UNIT}[)\]]"
    rf"|[.;,]\s+\d{{1,4}}{_UNIT}(?:\s+(?:left|remain\w*|rem|on (?:the |your )?needles?))?)"
    r"\s*\.?\s*$",
    re.IGNORECASE,
)
"""A sentence that handles stitches and ends with how many there are then."""
IN_A_ROW = re.compile(
    r"\d|around|even|same|plain|\bP\b|\bK\b|\bwork\b|\bas\b|without|\blike\b"
    r"|ditto|\bsee\b|identical|widen|narrow|\ball in\b|\bonly\b|\bthroughout\b"
    r"|\brib(?:bing|bed|s)?\b|\b(?:garter|moss|seed|stocking|stockinette|brioche|patt|pattern|lace)\b"
    r"|\b(?:ss[kp]|s2?kp?2?p|cdd|kfb|pfb|skpo?)\b"
    rf"|\b{SPELLED} in\b|^\W*{SPELLED}\b(?=\W*$|[ ](?:each|again|still)\b)|\b{SPELLED} together\b",
    re.IGNORECASE,
)
"""What else, behind a label, tells that it is a row's."""
CAST_OFF_BEHIND = re.compile(
    r"(?<=[.;])[ ]+(?=(?:then )?(?:bind|cast) off\b|b\.?o\b\.?|fasten off\b)", re.IGNORECASE
)
"""Before a sentence that ends the piece, "Rows 55-60: Knit. BO."."""
NUMBER = re.compile(rf"\W*\d{{1,4}}(?:\s?[(\[][\d\s,;:/-]+[)\]])?{_UNIT}\W*")
SIZES = re.compile(r"(?<=\d)\s?[(\[][\d\s,;:/-]+[)\]]")


def changes_stitches(words: str) -> bool:
    """Whether words do so, though they name no stitch to be worked."""
    words = SIZES.sub("", words)
    return CHANGE_FIRST.match(words) is not None or WITH_TOTAL.search(words) is not None


def end_in_number(words: str) -> bool:
    """Whether what stands behind a colon is a number of stitches and nothing else."""
    return NUMBER.fullmatch(words) is not None


def before_cast_off(text: str, mark: Mark, stop: int) -> int:
    """Where the words of a range of rows end: before a sentence that casts off behind the last."""
    several = len(mark.numbers) > 1 or mark.times > 1
    last = CAST_OFF_BEHIND.search(text, mark.end, stop) if several else None
    return last.start() if last is not None else stop
