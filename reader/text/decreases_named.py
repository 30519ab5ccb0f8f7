"""Knitting text -> the same text, length kept, with decreases that slip stitches named alike:
"sk2togpo", "sl1-k2tog-psso" as "sk2po", "s2togk1psso" as "s2kp".
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

_OVER = r"(?:pss?o|po|p)"
TWO_TOGETHER = Sought(
    ("2t",),
    rf"(?<![\w-])(?:sl?1?|slip1?)-?k(?:nit)?2t(?:og)?-?{_OVER}(?![\w-])", re.IGNORECASE,
)
BOTH_SLIPPED = Sought(
    ("sl2", "s2"),
    r"(?<![\w-])sl?2(?:tog)?-?k1?-?(?:p2?sso|po|p(?<=togkp)|p(?<=togk1p))(?![\w-])", re.IGNORECASE,
)
DOUBLE = Sought(
    ("dbl", "double dec"), r"\b(?:dble?|double) dec(?:reas\w+|s)?\b\.?", re.IGNORECASE
)


def decreases_named(text: str) -> str:
    """The text so put; any text goes in."""
    text = TWO_TOGETHER.sub(lambda m: "sk2po".ljust(len(m.group())), text)
    text = BOTH_SLIPPED.sub(lambda m: "s2kp".ljust(len(m.group())), text)
    return DOUBLE.sub(lambda m: "cdd".ljust(len(m.group())), text)
