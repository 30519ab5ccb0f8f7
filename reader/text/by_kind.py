"""Knitting text -> the same text, length kept, where a row works each stitch by its kind behind its
edge: "Slip 1, knit the purled stitches, purl the others" as "Slip 1, knit to end"; no stitch
is worked twice.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

_VERB = r"(?:knit|purl|pearl|seam|k|p)"
_DONE = r"(?:purled|pearled|knitted|knit|purl|pearl|seamed|made|plain|increased|over)"
_STS = r"(?:stitches|stitch|sts|ones|loops)"
_KIND = (
    rf"(?:all\s+)?(?:of\s+)?(?:the\s+|those\s+)?(?:{_DONE}\s+{_STS}|(?:{_STS}\s+|ones\s+)?(?:that|which)\s+"
    rf"(?:you\s+(?:have\s+)?|(?:were|are|was|have\s+been|appear)\s+){_DONE}(?:\s+(?:in|on)\s+the"
    r"\s+(?:preceding|previous|last|other)\s+(?:row|round|side))?"
    rf"|where\s+(?:you\s+(?:have\s+)?|it\s+(?:was|is)\s+){_DONE}(?:\s+before)?)"
)
_REST = r"(?:all\s+)?(?:the\s+)?(?:rest|others|remainder|remaining\s+(?:stitches|sts|ones))"
BY_KIND = Sought(
    ("k", "p", "seam"),
    rf"(?P<before>(?:[,;:.]|—|\band)\s+)(?:then\s+)?{_VERB}\s+{_KIND},?\s+(?:and\s+)?{_VERB}\s+"
    rf"(?:{_KIND}|{_REST})(?P<last>(?=\s*(?:[.;]|$))|(?=,\s+(?:and\s+)?(?:k|knit|slip|sl|p|purl)\s?"
    r"(?:1|one|the\s+last)\b(?!\d)))",
    re.IGNORECASE | re.MULTILINE,
)


def by_kind(text: str) -> str:
    """The text so put; any text goes in."""
    return BY_KIND.sub(_to_end, text)


def _to_end(found: re.Match[str]) -> str:
    behind = found.string[found.end() : found.end() + 1]
    far = "knit to last st" if behind == "," else "knit to end"
    return f"{found['before']}{far}".ljust(len(found.group()))
