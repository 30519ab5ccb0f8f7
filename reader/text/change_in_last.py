"""Several plain rows of which one, the last, changes the stitches, in whatever order that is told:
"Knit 4 rounds, on the last of them knit together the last two stitches" -> "Knit 4 rounds, dec 1 st
in last row"; length kept.
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED, number_said
from reader.text.fitting import fitted
from reader.text.sought import Sought

_N = rf"(?:\d{{1,2}}|{SPELLED})"
_LAST = (
    r"(?:on|in|at|of)(?: the end of)? (?:the )?(?:very )?last"
    r"(?: one| of (?:them|these|those)(?: rows| rounds| rnds)?| row| round| rnd)"
)
_CHANGE = (
    rf"(?:(?:by|you|work) )*(?:(?P<way>inc|dec)(?:reas(?:e|ing))?(?: (?P<n>{_N}))?"
    r"(?: sts?| stitch(?:es)?)?"
    r"|(?P<loss>k2tog|k ?2 tog(?:ether)?|ssk|knit(?:ting)? (?:2|two)(?: sts?| stitches)? together"
    r"|knit(?:ting)? together (?:the )?(?:last )?(?:2|two)(?: sts?| stitches)?"
    r"|tak(?:e|ing) (?:2|two) together)|(?P<gain>m1|kfb|mak(?:e|ing) (?:1|one)))"
    r"(?: at (?:the )?end(?: of (?:it|the (?:row|round)))?)?"
)
_BARE = re.compile(r"\?P<\w+>")
IN_LAST = Sought(
    ("last",),
    rf"(?P<lead>\b(?:k|knit|p|purl|work) {_N} (?:(?:more|plain|further) )?(?:rows|rounds|rnds)"
    rf"(?: (?:plain|even|straight))?)[,;]? (?:and |but )?"
    rf"(?P<told>{_LAST},? {_CHANGE}|{_BARE.sub('?:', _CHANGE)},? {_LAST})"
    r"(?=\s*(?:[.;,)]|$))",
    re.IGNORECASE | re.MULTILINE,
)
CHANGE = re.compile(_CHANGE, re.IGNORECASE)


def changed_in_last(text: str) -> str:
    """The text so put; any text goes in."""
    return IN_LAST.sub(_usual, text)


def _usual(found: re.Match[str]) -> str:
    change = CHANGE.search(found["told"])
    if change is None:
        return found.group()
    number = number_said(change["n"]) or 1
    way = (change["way"] or ("dec" if change["loss"] else "inc")).lower()
    said = f"{found['lead']}, {way} {number} st{'s' * (number > 1)} in last row"
    return fitted(said, found.group())
