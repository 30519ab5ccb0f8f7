"""Knitting text -> the same text, length kept, with decreases that slip stitches named alike:
"sk2togpo", "sl1-k2tog-psso" as "sk2po", "s2togk1psso" as "s2kp", "slip, slip, knit" as "ssk"; and
changes named twice over, "m1 increase", once.
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
SLIPPED_TWICE = Sought(
    ("slip, sl", "sl, sl", " tog"),
    r"\b(?:(?:slip|sl), (?:slip|sl), k(?:nit)?\b(?! ?\d)"
    r"|(?:sl|slip)\.? (?:the )?(?:next )?(?:2|two)(?: sts| stitches)?(?: (?:k(?:nit)?-?wise"
    r"|as if to k(?:nit)?|one at a time|individually|separately))*,? (?:then |and )*k(?:nit)?"
    r" (?:them|these|both|these (?:two|2)) tog(?:ether)?\b"
    r"(?: tbl\b| through (?:the(?:ir)? )?back (?:loops?|legs?))?)"
    r"(?!,? (?:p2?sso|pass))",
    re.IGNORECASE,
)
TWICE_NAMED = Sought(
    ("m1", "kfb", "tog ", "ssk "),
    r"(?P<name>\b(?:m1[lr]?|kfb|k2tog|p2tog|ssk)) (?:inc|dec)(?:rease)?\b\.?"
    r"(?= ?(?:[,;.)\]]|$|\(|to (?:last|end)))",
    re.IGNORECASE | re.MULTILINE,
)


def decreases_named(text: str) -> str:
    """The text so put; any text goes in."""
    text = SLIPPED_TWICE.sub(lambda m: "ssk".ljust(len(m.group())), text)
    text = TWICE_NAMED.sub(lambda m: m["name"].ljust(len(m.group())), text)
    text = TWO_TOGETHER.sub(lambda m: "sk2po".ljust(len(m.group())), text)
    text = BOTH_SLIPPED.sub(lambda m: "s2kp".ljust(len(m.group())), text)
    return DOUBLE.sub(lambda m: "cdd".ljust(len(m.group())), text)
