"""Text whose totals stand before the rows' labels, "(18) R3 [sc, inc] 6" -> the same text with each
behind its label, "R3 (18): [sc, inc] 6"; length kept, the words stay where they are.
"""

from __future__ import annotations

import re
from itertools import pairwise

from reader.text.sought import Sought

TOTAL_FIRST = Sought(
    ("(", "[", "/", "=", "|"),
    r"^(?P<total>[ ]*(?:[(\[]\d{1,4}(?: ?(?:sts?|sc|dc))?[)\]]|\d{1,4} ?[/|=]))[ ]*[-:]?[ ]*"
    r"(?P<label>(?:R|rnd|round|row|rd)s?[ ]?(?P<first>\d{1,3})(?:[ ]?(?:-|to)[ ]?\d{1,3})?)"
    r"(?P<gap>[ ]*[:.)-]?[ ]+)(?=\S)",
    re.MULTILINE | re.IGNORECASE,
)
LEAST = 3
"""Lines told so, one after the other from 1, that make them rows."""


def _counts_on(numbers: list[int]) -> bool:
    if len(numbers) < LEAST or numbers[0] != 1:
        return False
    return all(a < b or b == 1 for a, b in pairwise(numbers))


def labels_first(text: str) -> str:
    """The text with such a total behind its label."""
    if _counts_on([int(one["first"]) for one in TOTAL_FIRST.finditer(text)]):
        text = TOTAL_FIRST.sub(_label_first, text)
    return text


def _label_first(found: re.Match[str]) -> str:
    """ "(18) R3 " as "R3 (18): ", which has room for its colon in the space behind the label."""
    total = re.sub(r"\D", "", found["total"])
    for told in (f"{found['label']} ({total}): ", f"{found['label']}({total}): "):
        if len(told) <= len(found.group()):
            return told.rjust(len(found.group()))
    return found.group()
