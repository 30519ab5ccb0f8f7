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
_LEAD = (
    r"(?:until|till|til|up to|leaving|ending)"
    r"(?: (?:there (?:are|is)|you(?:'ve| have| reach| get to| are at| come to)|only|just|the|last"
    r"|final))*"
)
LEFT = Sought(
    ("until", "till", "til ", "up to", "leaving", "ending"),
    rf"(?P<list>[*)\]][ ,;]*(?:rep(?:eat)?[ ])?(?:all )?(?:across )?)(?P<far>{_LEAD} {_N}"
    rf"(?: (?:unworked|unused))?(?: {_THING})?"
    r"(?P<end> (?:(?:are |is )?(?:left|remain(?:s|ing)?|unworked)"
    r"|(?:before|from) (?:the )?end))?)(?=[,;] ?\S)",
    re.IGNORECASE,
)
MADE = Sought(
    ("m1", "m 1", "make 1"),
    r"(?P<at>^\s*|[:.;]\s+)(?P<list>(?:k|p|rib|knit|purl) ?\d{1,2}),? (?P<made>m ?1[lr]?|make 1)"
    rf",? to (?:the )?last {_N} (?:sts|stitches)\b",
    re.IGNORECASE | re.MULTILINE,
)
""" "K5, m1 to last 5 sts": both, since one that is made takes no stitch to go on with."""
SAYS_LEFT = re.compile(r"\blast\b|\bfinal\b|^leaving\b|\bleft\b", re.IGNORECASE)


def to_the_last(text: str) -> str:
    """The text so put; any text goes in."""
    return MADE.sub(_both, LEFT.sub(_as_usual, text))


def _both(found: re.Match[str]) -> str:
    told = f"{found['at']}({found['list']},{found['made']}) to last {found['n']} st"
    whole = found.group()
    return told.ljust(len(whole)) if len(told) <= len(whole) else whole


def _as_usual(found: re.Match[str]) -> str:
    far, thing = found["far"], found["thing"]
    if not found["end"] and SAYS_LEFT.search(far) is None:
        return found.group()
    said = f"to last {found['n']}" + (f" {thing}" if thing else "")
    return found["list"] + said.ljust(len(far)) if len(said) <= len(far) else found.group()
