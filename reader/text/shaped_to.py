"""Text -> the same text, length kept, with what a row says in front of its list that it comes to
put behind it, as a total: "Increase to 51 sts: (1 sc, 2 sc in next st) 17 times", "Rnd 5: decrease
to 9: sc2tog 9 times"; and a row that so tells where it is, "Dec over cables: p2, k2tog, k1 to end",
with a label.
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED, number_said
from reader.text.fitting import fitted
from reader.text.sought import Sought

_LABEL = (
    r"(?P<label>[^\S\n]*(?:(?:next|last|following)? ?(?:row|rnd|round)s?\b[^\n:]{0,12}[:.]"
    r"|(?:r|row|rnd|round)? ?\d{1,3} ?[:.)])[ ]*)?"
)
_SHAPES = r"(?:inc|dec)(?:reas(?:e|ing))?\b\.?"
TO_TOTAL = Sought(
    ("inc", "dec"),
    rf"^{_LABEL}{_SHAPES} (?:down |up )?to (?P<n>\d{{1,4}}|{SPELLED})"
    r"(?: (?:sts?|stitches|[shd]{1,2}c|htr|tr))?"
    r"(?: (?:evenly|in all|as follows|thus|like this))*(?: ?[:—–] ?| - |,? (?=[(\[*]))"
    r"(?P<list>[^\n]*?\S)(?P<stop>\.?[^\S\n]*)$",
    re.IGNORECASE | re.MULTILINE,
)
ONLY_WHERE = Sought(
    ("inc", "dec"),
    rf"^(?P<said>{_SHAPES} (?:(?:over|for|at|across|in|between|of|the)\b[a-z ]{{3,24}})): ?"
    r"(?=[^\n]*(?:\btimes\b|\bto end\b|\baround\b|\brep(?:eat)?\b|\bx ?\d|\bto last\b))",
    re.IGNORECASE | re.MULTILINE,
)
ENDS_IN_TOTAL = re.compile(r"[(\[=—-]\s*\d+[^()\[\]]{0,16}[)\]]?\.?$|\b\d+ st(?:itche)?s\.?$")
NEXT = "Next row: "


def with_total_behind(text: str) -> str:
    """The text with such rows so told; any text goes in."""
    text = TO_TOTAL.sub(_behind, text)
    return ONLY_WHERE.sub(lambda one: fitted(NEXT, one.group()), text)


def _behind(found: re.Match[str]) -> str:
    said, whole = found["list"], found.group()
    if not ENDS_IN_TOTAL.search(said):
        said += f" ({number_said(found['n'])})"
    label = found["label"] or NEXT
    return fitted(label + said if len(label + said) <= len(whole) else said, whole)
