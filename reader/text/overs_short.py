"""Knitting text -> the same text, length kept, with overs cut short in other ways than most as
"yf" or "yo": "y/o", "w.f., k.2 tog.", "wl. fd., k 1", "yfrn, p1", "y.f., k.2 tog.", "w.o., k1".
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

_YARN = r"(?:y|yn|yarn|w|wl|wool|th|thd|cotton|silk)"
_FORWARD = r"(?:f|fd|fwd|ford|forwd|forward)"
_ROUND = (
    rf"(?:{_FORWARD}\.? ?(?:r\.? ?n|(?:rd|round)\.? ?n|o\.? ?n)|(?:rd|round)\.? ?(?:n(?:dl)?)?"
    r"|r\.? ?n|o\.? ?n)"
)
_TIMES = r"(?:\.| ?twice| ?\d(?! ?(?:tog|st)))?"
_NEXT = r"[,;]?\s?(?:and )?[*(\[]?\s?"
_BARE = r"(?<![\w.'-])(?<!the )(?<!your )(?<!bring )(?<!put )"
_KNIT = r"(?:k\b|k ?\.? ?\d|knit\b|k2tog|kb|ssk|skp|n\b)"
_ANY = r"(?:[kp]\b|[kp] ?\.? ?\d|knit\b|purl\b|[kp]2tog|ssk|skp|sl\b|s\b|n\b)"
FORWARD = Sought(
    ("f",),
    rf"{_BARE}{_YARN}\.?[ ]{{0,2}}{_FORWARD}\b\.?(?={_TIMES}{_NEXT}{_KNIT})",
    re.IGNORECASE,
)
"""Before a knitted stitch; whether it is an over is seen where it is read, "sl 1, yf, k5"."""
ROUND = Sought(
    ("n", "rd"),
    rf"{_BARE}{_YARN}\.?[ ]{{0,2}}{_ROUND}\b\.?(?={_TIMES}{_NEXT}{_ANY})",
    re.IGNORECASE,
)
OVER = Sought(
    ("w", "y/o"), rf"{_BARE}(?:wl?\.?[ ]{{0,2}}|y/)o\b\.?(?={_TIMES}{_NEXT}{_ANY})", re.IGNORECASE
)


def overs_named(text: str) -> str:
    """The text so put; any text goes in."""
    text = FORWARD.sub(lambda m: "yf".ljust(len(m.group())), text)
    return OVER.sub(_over, ROUND.sub(_over, text))


def _over(found: re.Match[str]) -> str:
    return "yo".ljust(len(found.group()))
