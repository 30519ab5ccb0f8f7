"""Clean text of a crochet pattern -> the same text, length kept, without the care that a chain be
not twisted: "join taking care not to twist ch" is a join, to nothing of that name.
"""

from __future__ import annotations

import re

from reader.terms.numbers import SPELLED
from reader.text.sought import Sought

CHAIN = r"(?:ch(?:ain)?|sts|stitches|it|work)"
CARE = Sought(
    ("twist",),
    r"\s*,?\s+(?:and\s+)?(?:(?:taking|take) care|(?:being|be) (?:very )?careful"
    r"|(?:making|make) sure"
    rf"|careful|without|so as)\s+(?:not to\s+|that\s+)?(?:let\s+)?(?:(?:the\s+)?{CHAIN}\s+)?"
    r"(?:(?:be|becomes?|is not|are not|does not|do not)\s+)?twist(?:ing|ed)?"
    rf"(?:\s+(?:the\s+)?{CHAIN})?\b",
    re.IGNORECASE,
)


_N = rf"(?:\d{{1,3}}|(?:{SPELLED})\b)"
_CH = rf"\b(?:(?:ch|chain)\s(?:of\s)?{_N}|{_N}\s(?:ch|chains?))\b"
_SLIP = r"(?:slip|sl\b|s\.?s\b|join|clos)"
CHECKED = Sought(
    ("twist", "straight", "flat"),
    rf"(?P<chain>{_CH}[^.;\n]{{0,30}}?)"
    r"[.,;:]?\s+(?:and\s+|then\s+)*(?:check|see|make\ssure|ensure|lay|keep|mind|be\scareful"
    r"|take\scare|without"
    r"|do\snot|don't|with\snone|not)\b[^.;\n]{0,50}?\b(?:un)?(?:twist|straight|flat)\w*[^\w\n]{1,3}"
    rf"(?:(?:and|then|now)\s+)*(?={_SLIP})",
    re.IGNORECASE,
)
""" "Make 30 chain. Check that it lies straight, then slip stitch into the first"."""
ENDS = Sought(
    ("join", "clos", "slip", "together"),
    rf"(?P<chain>{_CH}[^.;\n]{{0,40}}?[.,;]?\s+(?:and\s+|then\s+)*)"
    r"(?P<join>(?:join|close)(?:ing)?\s(?:it|them|both\sends|(?:the|its|this)\s(?:chain|ends"
    r"|two\sends))"
    r"|(?:slip\sstitch|sl\sst)\s(?:the|its|both)\s(?:two\s)?ends\stogether)",
    re.IGNORECASE,
)
""" "Chain 30 and join them in a ring", "slip stitch the ends together"."""


def without_care(text: str) -> str:
    """The text with such words blank."""
    text = CHECKED.sub(lambda m: f"{m['chain']} and".ljust(len(m.group()) - 1) + " ", text)
    text = ENDS.sub(lambda m: m["chain"] + _joined(m["join"]), text)
    return CARE.sub(lambda found: re.sub(r"\S", " ", found.group()), text)


def _joined(said: str) -> str:
    return ("Join" if said[0].isupper() else "join").ljust(len(said))
