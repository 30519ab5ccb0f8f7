"""Clean text -> the same text, length kept, without what only says how the stitches are worked that
an increase has made: "(all inc sts will be worked in pattern)", "taking extra sts into rib". They
are no increase of their own.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

_NEW = (
    r"(?:all\s+|the\s+|these\s+|any\s+|your\s+)*"
    r"(?:inc(?:reas(?:ed|es?|ing))?(?:'?d|s|\.)?|extra|new|newly\s+made|added|additional)\s+"
    r"(?:sts?|stitches)"
)
_DONE = r"(?:worked|taken|brought|knitted|knit|incorporated|kept)"
_FABRIC = (
    r"(?:(?:the|main|lace|cable|established|st|rib|cable)\s+)*"
    r"(?:pattern|patt|ribb?(?:ing)?|(?:moss|seed|garter|stocking|stockinette|st)\s*(?:st|stitch)"
    r"|stockinette|garter)\b\.?"
)
REMARK = Sought(
    ("sts", "stitches", "st"),
    r"[(\[,;]?\s*\b(?:and\s+)?"
    rf"(?:(?:working|taking|bringing|knitting|incorporating|keeping)\s+{_NEW}"
    rf"|(?:work|take|bring|incorporate)\s+{_NEW}"
    rf"|{_NEW}\s+(?:(?:are|is|to|will|should|may|being|be|always|then)\s+)+{_DONE})"
    rf"\s+in(?:to)?\s+{_FABRIC}"
    r"(?:\s+(?:as\s+(?:they|you|it|established|set|before|made|far)\b[^.;,()\[\]]*"
    r"|when\s+possible|at\s+each\s+side|on\s+(?:each|both)\s+sides?))?\s*[)\]]?",
    re.IGNORECASE,
)


def without_new_stitches(text: str) -> str:
    """The text without such remarks; any text goes in."""
    return REMARK.sub(_spaces, text)


def _spaces(found: re.Match[str]) -> str:
    """Line ends stay, and a bracket that is only half told."""
    said = found.group()
    if (said.lstrip()[:1] in "([") != (said.rstrip()[-1:] in ")]"):
        return said
    return re.sub(r"\S", " ", said)
