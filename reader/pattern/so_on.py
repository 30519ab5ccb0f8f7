"""Rows that go on as they went, so many: "Continue in this way until 28 rows are done", "go on so
for 20 rows" -> a rule; how they went, only counting knows.
"""

from __future__ import annotations

import re

from reader.pattern.changes import find_change
from reader.pattern.rule import Rule

_GO_ON = (
    r"(?:continue|continuing|cont|proceed|go on|keep on|keep|carry on|work(?: on)?|knit(?: on)?|do)"
    r"\.?(?: (?:on|working|knitting|to work|to knit|doing))?"
)
_SO = (
    r"(?:thus|so|this|that|(?:in|after) (?:this|that|the same|same|like) (?:way|manner|fashion)"
    r"|like (?:this|that)|as before|the same)"
)
SO_ON = re.compile(
    rf"^\W*(?:(?:and|then|now|next),? )*{_GO_ON} {_SO}\b(?:(?!\b(?:cast|bind|pick|chart))[^.;:\d])"
    r"{0,40}?\b(?:(?P<more>for (?:the next |another )?)|(?:until|till) (?:(?:you have|there are"
    r"|you've) )?(?:(?:done|worked|knitted|knit|made|completed) )?)(?P<rows>\d+) "
    r"(?P<further>more )?(?:rows|rounds|rnds)\b(?! (?:with|of)\b)(?: (?:in all|altogether))?"
    r"(?: (?:are|have been|were) \w+)?",
    re.IGNORECASE,
)
SAME_WAY = re.compile(
    r"^\W*(?:(?:are|is|worked|knitted|knit|done|made|go on|continue|on) )*"
    r"(?:in (?:the same|this|like|a similar) (?:way|manner|fashion)|similarly|likewise)\b"
    r"|^\W*the (?:\w+ ){0,2}(?:stitches|number) [^.;]{0,80}?\bincreases? by\b",
    re.IGNORECASE,
)
"""Behind a label of many rows: "in the same manner, only one stitch more between"."""
OWN_STEP = re.compile(r"\b(?:inc|dec)(?:reas)?ing (?:\d|one)", re.IGNORECASE)
"""So many at a time, told of the rows themselves."""


def so_on(words: str, labelled: bool = False) -> Rule | None:
    """The rule of so many rows that go on as those before; None where the words are none. Told with
    "for" they are that many more, told with "until" those worked are among them. labelled: a label
    may tell how many they are.
    """
    found = SO_ON.match(words)
    if found is None and labelled and SAME_WAY.match(words):
        change = find_change(words)
        if change is None or not change.step or not OWN_STEP.search(words):
            return Rule("grow", rows=0, end=len(words), rest=words, as_before=True)
    if found is None:
        return None
    many = int(found["rows"][:3])
    more = found["more"] is not None or found["further"] is not None
    return Rule(
        "grow", rows=many if more else 1, until_row=None if more else many, start=found.start(),
        end=found.end(), rest=found.group(), as_before=True,
    )  # fmt: skip
