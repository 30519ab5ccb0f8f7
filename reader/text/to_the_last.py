"""How far a list is repeated, told by what is left, "*sk 2, V in next* until 3 ch are left, dc in
last", "(k2, p1) leaving 3 sts, k3" -> "... to last 3 ch", as most tell it; length kept.

Only where the row goes on behind it: "(k2tog) until 6 sts remain." ends with what remains.
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED
from reader.text.sought import Sought

_N = rf"(?P<n>\d{{1,2}}|{SPELLED})"
_THING = r"(?P<thing>(?:chs?|chains?|sts?|stitches|[shd]{1,2}c|h?tr|loops?))"
_THINGS = [_THING.replace("thing", f"thing{n}") for n in range(4)]
_LEAD = (
    r"(?:until|till|til|up to|as far as|leaving|ending)"
    r"(?: (?:there (?:are|is)|you(?:'ve| have| reach| get to| are at| come to)|only|just|the|last"
    r"|final))*"
)
_LIST = r"(?P<list>(?:[*)\]}]|(?<!from )\*(?!s\b)[^*()\[\].;\n]{3,90}?)[ ,;.]*)"
_ON = (
    r"(?P<on>(?:(?:rep(?:eat)?(?: from \*)?|all|across|along|over and over(?: again)?|the way"
    r"|the row|row|again and again|like this|this way)[ ])*)"
)
LEFT = Sought(
    ("until", "till", "til", "to", "as far", "leaving", "ending"),
    rf"{_LIST}{_ON}(?P<far>{_LEAD} {_N}(?: (?:unworked|unused))?(?: {_THING})?"
    r"(?P<end> (?:(?:are |is )?(?:left|remain(?:s|ing)?|rem\b\.?|unworked)"
    r"|(?:before|from) (?:the )?end))?"
    rf"|(?P<near>to within|to|until|till) (?P<n2>\d{{1,2}}|{SPELLED})(?: {_THINGS[2]})?"
    r" (?:of|from|before) (?:the )?end(?: of (?:the )?(?:row|round))?"
    rf"|(?P<usual>to (?:the )?last (?:\d{{1,2}}|{SPELLED})(?: {_THINGS[3]})?))"
    r"(?=[,;] ?\S| (?:then|and) \S)",
    re.IGNORECASE,
)
MADE = Sought(
    ("m1", "m 1", "make 1"),
    r"(?P<at>^\s*|[:.;]\s+)(?P<list>(?:k|p|rib|knit|purl) ?\d{1,2}),? (?P<made>m ?1[lr]?|make 1)"
    rf",? to (?:the )?last {_N} (?:sts|stitches)\b",
    re.IGNORECASE | re.MULTILINE,
)
""" "K5, m1 to last 5 sts": both, since one that is made takes no stitch to go on with."""
BARE = re.compile(
    r"(?:^|[*,;]|\bthen|\band) ?(?:[kp]|knit|purl|rib|work|[shd]{1,2}c|h?tr)[a-z ]*$",
    re.IGNORECASE,
)
"""A list that ends in stitches worked so far themselves, "*k1, ssk, k to last 3 sts"."""
AGAIN = re.compile(r"[^.\n]*\brep(?:eat)?\b[^.\n]*\*", re.IGNORECASE)
SAYS_LEFT = re.compile(r"\blast\b|\bfinal\b|^leaving\b|\bleft\b", re.IGNORECASE)


def to_the_last(text: str) -> str:
    """The text so put; any text goes in."""
    return MADE.sub(_both, LEFT.sub(_as_usual, text))


def _both(found: re.Match[str]) -> str:
    told = f"{found['at']}({found['list']},{found['made']}) to last {found['n']} st"
    whole = found.group()
    return told.ljust(len(whole)) if len(told) <= len(whole) else whole


def _as_usual(found: re.Match[str]) -> str:
    far, listed, on, whole = found["far"], found["list"], found["on"], found.group()
    thing = found["thing"] or found["thing2"]
    lead = found["usual"] or found["near"] or found["end"] or SAYS_LEFT.search(far)
    opened = listed.startswith("*") and bool(listed[1:].strip(" ,;."))
    if opened and (BARE.search(listed) or AGAIN.match(found.string, found.end())):
        return whole
    again = on.lower().startswith("rep")
    if not lead or (found["usual"] and (again or not (opened or on))):
        return whole
    said = found["usual"] or f"to last {found['n'] or found['n2']}" + (f" {thing}" if thing else "")
    if opened and not again:
        # The list is told to end where it is repeated to: "*sc, ch 1, skip 1 to last 2 sts".
        told = f"{listed.rstrip(' ,;.')}* {said}"
        told = told if len(told) <= len(whole) else told.replace("* to", "*to")
    else:
        told = f"{listed}{on * again}{said}"
    return told.ljust(len(whole)) if len(told) <= len(whole) else whole
