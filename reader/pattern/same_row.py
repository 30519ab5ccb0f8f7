"""Rows told by the number of another: "same as 4th row", "as the last row", "same again"."""

from __future__ import annotations

import re

from reader.pattern.changes import change_once
from reader.pattern.labels import opened
from reader.pattern.rule import Rule
from reader.pattern.rule_words import (
    BETWEEN_INCS,
    CHANGES_COUNT,
    FEWER_LOOPS,
    PLAIN_DIFFERENCE,
    SAME_AS,
    THE_SAME,
)

BETWEEN = re.compile(
    r"\b(?:with|having|making|working) (?:\d+|\w+)"
    r" (?:(?:sts?|stitches|[shd]{1,2} ?c|plain) )?between\W*$",
    re.IGNORECASE,
)
"""So many stitches between those that change the count, in a row of few words."""
SAME_IDEA = re.compile(
    r"\W*(?:(?:is|it's|we do|do|work|this is|that's|goes|are)\s+)*(?:the )?(?:very )?same"
    r"(?: idea| thing| principle| way| again"
    r"| as (?:before|that|(?:the )?last (?:time|round|row)))?[,;]?\s+"
    r"(?:but|only|except|just|with|putting|making|working|having)\b",
    re.IGNORECASE,
)
"""The last row in other words: "is the same idea but with two stitches before each increase"."""


_KINDS = (
    r"(?:(?:plain|single|normal|regular) )?(?:sts?|stitch(?:es)?|[sd] ?c|h ?d ?c|h?tr|singles"
    r"|ones?|plain)"
)
SPACED = re.compile(
    r"\W*(?:(?:(?:rnd|round|row)(?: (?P<row>\d+))?|the|very|same|again|once|as|for|last|before"
    r"|still|and|now|but|this|time|only|with|work|working|making|having|put|leave|there|is|are|idea|thing"
    r"|principle|way|once more)\b[\s,;:—-]*)*+"
    rf"(?P<more>(?:another|an extra|an additional|an|1|\d+|just) (?:more|extra|additional"
    rf"|further) |another |an extra )?"
    rf"(?P<n>\d+ )?(?:more )?(?:{_KINDS} )?(?:more )?(?:in[ -]?)?(?:between|before)"
    rf"(?: (?:each|every|the|all|all the|both))?(?: (?:inc\w*|dec\w*|shaping\w*|of them|them|one"
    rf"|pair|two|(?:doubled|increased|decreased|widened) (?:ones?|sts|stitches|[a-z]+)|widenings))?"
    rf"(?: \(?\d+\)?)?"
    rf"(?: (?:this time|now|than before|than (?:the )?last(?: (?:time|round|row))?|again))?\W*$",
    re.IGNORECASE,
)
"""The last row, or one that is named, once more with its changes farther apart: "one more stitch
between increases", "again, with 3 sc in between"."""
RELATES = re.compile(
    r"\W*(?:the )?(?:very )?(?:same|again|once more|as|still|this time)\b", re.IGNORECASE)
IN_PATTERN = re.compile(
    r"\W*(?:(?:work|continue|cont|proceed|keep on|same|as before)\b[ ,]*)*"
    r"(?:in (?:this |the |same |established )*(?:pattern|patt|manner|way))?[ ,;]*"
    r"(?:(?:working|making)(?: a)? (?P<group>shell|fan|group)s? (?:in|over)(?: each)? (?P=group)s?"
    r"[ ,]*(?:and )?)?"
    r"(?=having\b|with\b)",
    re.IGNORECASE,
)
"""The row before once more, of which only what differs is told."""
GOES_ON = re.compile(
    r"\s*(?:,(?!\s*(?:cut|turn|join|fasten|drop|break)\b)|for|until|\d+|through|to\b|and\b|once"
    r"|twice|alternately|followed by|then\b)"
)
"""Behind the rows of "repeat rows 2 and 3", these say how often: a rule over rows."""


OTHER_TIMES = re.compile(
    r"\b(?:with|working|work|making|repeating|having) (?:the )?(?P<list>\([^()]+\))"
    r" (?:\d+ times|twice|three times|four times|five times|six times)",
    re.IGNORECASE,
)
"""A list of the row that is quoted, with how often it is worked here."""


GROWN = re.compile(
    r"\W*(?:(?:but|only|except|just|always|and) )*(?:(?:with|having|that|there (?:is|are)"
    r"|working|knitting) )?"
    r"(?!inc|dec|cast|bind)[^.;]{0,60}?(?:\b\d+ (?:(?:plain|knit\w*) )?(?:sts?|stitch(?:es)?) more"
    r"|\b\d+ (?:more|extra|additional)(?: plain| knit\w*)?(?: sts?| stitch(?:es)?)?"
    r"|(?:part|stitches|number|middle|plain)\b[^.;]{0,60}? increases? by \d+)\b"
    r"(?=[^.;]{0,30}\b(?:between|middle|centre|center|plain|before|each time|in (?:every|each))\b)",
    re.IGNORECASE,
)
"""The row that is quoted with more plain stitches between what changes it."""
CHANGED = re.compile(
    r"\s*[,;(]?\s*(?:(?:but|and|except|with|also|at the same time)\s+)*(?:inc|dec)", re.IGNORECASE
)
"""Behind the row that is quoted, these change its count."""
OFTEN = re.compile(r"\b(?:times|twice|once|until|till|next|foll\w*)\b", re.IGNORECASE)
ON_EVERY = re.compile(r"\s(?:of|on|in) (?:each|every|all|these|both|the) (?:rows?|rounds?|rnds?)\b")


def same_as(words: str) -> Rule | None:
    """ "Same as 4th row"; a difference named behind it makes it something else."""
    if IN_PATTERN.match(words) and FEWER_LOOPS.search(words):
        return Rule("same", rest=words, named=(0,), fewer=True)
    again = THE_SAME.match(words)
    if again:
        return Rule("same", rest=words[again.end() :], named=(0,))
    spaced = SPACED.match(words) if "etween" in words or "efore" in words else None
    if spaced and (spaced["more"] or RELATES.match(words)):
        return Rule("same", rest=words, named=(int(spaced["row"] or 0),), by_gain=True)
    if SAME_IDEA.match(words):
        apart = BETWEEN_INCS.search(words) or BETWEEN.search(words)
        return Rule("same", rest=words, named=(0,), by_gain=apart is not None, differs=not apart)
    found = SAME_AS.match(words)
    if not found:
        return None
    rest = found.group("rest")
    goes_on = GOES_ON.match(rest) and not (CHANGED.match(rest) and not OFTEN.search(rest))
    if goes_on and re.match(r"\W*(?:rep|repeat)\b", words, re.IGNORECASE):
        return None
    if found.group("last") and re.match(r"\W*(?:rep|repeat)\b", words, re.IGNORECASE):
        return None
    numbers = opened(found.group("a") or found.group("b") or "0")
    changed = CHANGED.match(rest)
    step = change_once(ON_EVERY.sub("", rest), one_row=True)[0] if changed else 0
    if step:
        return Rule("same", numbers[0], numbers[-1], rest=rest, named=numbers, step=step)
    differing = PLAIN_DIFFERENCE.search(rest[:40])
    if BETWEEN_INCS.search(rest) or GROWN.match(rest):
        # As many increases as in the row that is quoted, only farther apart.
        return Rule("same", numbers[0], numbers[-1], rest=rest, named=numbers, by_gain=True)
    differs = differing is not None and bool(CHANGES_COUNT.search(rest[differing.end() :]))
    differs = differs or OTHER_TIMES.search(rest) is not None
    fewer = FEWER_LOOPS.search(rest) is not None
    return Rule(
        "same", numbers[0], numbers[-1], rest=rest, named=numbers, differs=differs, fewer=fewer
    )
