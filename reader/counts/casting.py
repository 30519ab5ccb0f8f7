"""A cast on told in running words -> where its clause stands; the words around it work nothing."""

from __future__ import annotations

import re
from dataclasses import dataclass
from itertools import pairwise

from reader.terms.numbers import SPELLED

CASTS = re.compile(
    r"(?<!from )(?<!after )(?<!the )\b(?:cast(?:ing)?|set|put)\s+(?:on|up)?\s*"
    r"(?:loosely\s+|very \w+\s+|about\s+|on\s+)*"
    r"(?:(?:with|using)\s+(?:\w+\s+){1,4}?(?:needles?|yarn|wool|hook)\s+)?"
    r"(?:to\s+each[^,.;]{0,30}?\s+)?"
    rf"(?:(?:another|an?\s+additional)\s+)?(?:\d+|{SPELLED})"
    r"(?:\s+(?:more|further|extra|additional|new))?"
    r"(?!\s*(?:inch|ins?\b|cm|\"|rows|rounds))\s*"
    r"(?:[\(\[][\d,;:\s-]+[\)\]]\s*)?(?:more\s+)?(?:sts?\b|stitches|loops)?"
    rf"|\bCO\s+(?:\d+|(?:{SPELLED})\b)",
    re.IGNORECASE,
)
_LISTED = (
    rf"(?:(?:slip|sl|make|m|narrow|seam|take)\s?(?:\d|one|two|the\s+(?:1st|first)|{SPELLED})"
    r"|(?:bring|throw|put)\s+the\s+(?:thread|wool|cotton)|over\b)"
    r"(?![^.;,]*\b(?:every|each)\s+row)"
)
"""How a row's list may begin, beside its plain stitches."""
_WORKS = (
    r"(?:(?:knit(?:ting)?|purl(?:ing)?|pearl(?:ing)?|work(?:ing)?|rib|k|p)\b"
    rf"|{_LISTED})"
)
CLAUSE_ENDS = re.compile(
    rf"[.;](?=\s|-|$)|,?\s+(?:and|then)\s+(?={_WORKS})|,(?:\s+|\s?(?:--|—)\s?)(?={_WORKS})",
    re.IGNORECASE,
)


WORKS_ON = re.compile(
    r"\W*(?:(?:join|divide|turn|arrange|place)\b[^.;]{0,60}?(?:,|;|\band\b|\.)\W*(?:and |then )*)?"
    r"(?:(?:then|and|now)\s+)*"
    r"(?P<verb>(?:knit(?:ting)?|k|purl|pearl|p|rib|[kp]1?f ?&?b"
    r"|inc(?:rease)?\s+(?:(?:once|1|one)\s+)?(?:in|into|every|each)"
    r"|\d+ (?:rows|rounds|rnds)|garter|moss|seed"
    r"|stocking|stockinette?|st\.? st|g\.? st|work(?:ing)?(?! in (?:the )?rounds?\b)"
    rf"(?! circular))\b|{_LISTED})",
    re.IGNORECASE,
)
"""What follows a cast on and works stitches."""


WORKED = re.compile(
    r"\b(?:k|p|knit|purl|pearl|seam|rib|patt|work)\s*\d"
    r"|\b(?:take off|slip|put|leave|place)\b[^.;]*\b(?:thread|holder|pin|wool|needle)\b|\b(?:k|p"
    r"|knit|purl)\s+(?:across\s+)?the\s+(?:\w+\s+)?\d+\s+(?:\w+\s+)?st|\b(?:k|p|knit|purl|rib|work|patt)\s+(?:across|to|until|till|back|plain"
    r"|all|even|one)\b|\b(?:inc|dec|narrow|widen)(?:reas\w+|ing)?\b|\b(?:cast|bind) off\b",
    re.IGNORECASE,
)
"""Work that comes before: what is cast on is added to it."""
ROWS_BEFORE = re.compile(
    r"\bat\s+(?:the\s+)?(?:beg\w*|end)\s+of\s+(?:each\s+of\s+)?(?:the\s+)?(?:next|foll\w*)\s+\d+\s+rows\W*$",
    re.IGNORECASE,
)
"""Told before it, at which rows' ends stitches are added."""
AT_AN_EDGE = re.compile(
    r"\bat (?:the |each |both )?(?:\w+ )?(?:edges?|beg\w*|end|ends|sides?)\b|\bover\b"
    r"|\bin (?:place of|their place|its place)\b|\bat the (?:thumb|opening|gap|slit)\b",
    re.IGNORECASE,
)


LAID_OUT = re.compile(
    r",?\s+(?:placing|having|putting|arrang\w+|divid\w+|distribut\w+|with)\s+(?:them\s+)?(?:\d+|so|evenly|on|over)\b",
    re.IGNORECASE,
)
"""Behind a cast on, how its stitches lie on the needles."""


PUT_APART = re.compile(
    r"(?:put|set)\b[^.;]{0,60}?\b(?:sts?|stitches|loops)\s+(?:on|onto|to|upon|for)\b", re.IGNORECASE
)
"""Stitches that were worked before, put on a needle."""


@dataclass(frozen=True, slots=True)
class Casting:
    """Where the clause of a cast on begins and ends, and whether what follows works stitches."""

    start: int
    end: int
    goes_on: bool


def cast_on_in(words: str) -> Casting | None:
    """The cast on told in words; None where there is none, or where stitches are worked before it.
    """
    found = CASTS.search(words)
    if not found or WORKED.search(words[: found.start()]) or PUT_APART.match(words, found.start()):
        return None
    if ROWS_BEFORE.search(words[: found.start()]):
        return None
    told = found.start() + len(found.group().rstrip())
    end = CLAUSE_ENDS.search(words, told)
    if AT_AN_EDGE.search(words[told : end.start() if end else len(words)]):
        return None
    if end is None:
        return Casting(found.start(), len(words), False)
    works = WORKS_ON.match(words, end.end())
    if works is None:
        later = _worked_later(words, end.end())
        return Casting(found.start(), later or end.end(), later is not None)
    return Casting(found.start(), works.start("verb"), True)


def of_casting(words: str) -> str:
    """The words from the sentence on that casts on; all where none does."""
    found = CASTS.search(words)
    if found is None:
        return words
    return words[max(words.rfind(stop, 0, found.start()) for stop in ".;") + 1 :]


SENTENCE = re.compile(r"(?:^|(?<=[.;]))\s+(?=[A-Z*(])")


def _worked_later(words: str, at: int) -> int | None:
    """Where the first sentence begins that works stitches, though it does not begin with a verb:
    "From shoulder edge bind off 5 sts"; None where none does.
    """
    starts = [at, *(found.end() for found in SENTENCE.finditer(words, at)), len(words)]
    for start, stop in pairwise(starts):
        sentence = words[start:stop]
        if WORKED.search(sentence) and not CASTS.search(sentence):
            return start
    return None
