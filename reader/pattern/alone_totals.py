"""A row's words -> the total that is a number and nothing else at their end: "..., repeat. 21",
"hdc across 12", "*k5, k2tog* around 24 (30)"; None where none is.
"""

from __future__ import annotations

import re

from reader.pattern.totals import Printed

_NUMBER = (
    r"\s+(?P<n>\d{1,4})(?P<more>\s*[(\[][\d,;:\s]+[)\]]|(?:/\d+)+)?\s*\.?\s*$"
)
_ALL_ROUND = r"(?:across|around|(?<!in )to (?:the )?end(?: of (?:the )?(?:row|rnd|round))?)"
CROCHET = re.compile(
    r"(?:(?<=[a-z)\]*][.;:])|(?<=[a-z)\]*] [:=])|(?<=\bR\d)|(?<=\bR\d\d)"
    rf"|(?i:\b(?:{_ALL_ROUND}|(?:ring|circle|loop|(?<=in )mr)|(?<=\d )times|twice"
    rf"|(?<![a-z] )x ?\d{{1,2}}|in(?:to)? each(?: (?:st|stitch|sc|dc|hdc|tr))?)))"
    rf"{_NUMBER}"
)
KNITTING = re.compile(
    rf"(?:(?i:\b{_ALL_ROUND})(?:\s[-—=])?|(?<=[a-z)\]*][.;])"
    rf"(?<!\W[a-z][.;])(?<!\W(?:sl|ov)[.;]))"
    rf"{_NUMBER}"
)
"""In knitting, behind what goes to the row's end or a stop: elsewhere it may be worked, as behind
the stop of "k.", where a line ends too.
"""


def number_alone(text: str, crochet: bool) -> Printed | None:
    """The total, with its place in the words; crochet: more may stand before it."""
    last = (CROCHET if crochet else KNITTING).search(text)
    if last is None:
        return None
    numbers = tuple(int(n[:6]) for n in re.findall(r"\d+", last["n"] + (last["more"] or "")))
    return Printed(last.start("n"), last.end(), numbers)
