"""Which words say that a text is crochet or knitting, and whether its crochet is in US or UK terms.
"""

from __future__ import annotations

from enum import Enum


class Terms(Enum):
    """Whose crochet words a pattern uses."""

    US = "US"
    UK = "UK"


KNITTING_WORDS = (
    r"\bcast(?:ing)? on\b|\bCO ?\d|\bbind off\b|\bcast off\b|\bBO\b|\bpurl|\bknit (?!and crochet)|"
    r"\bk\d|\bp\d|\bK \d|\bP \d|\bk2tog|\bssk\b|\bskp\b|\bneedles?\b(?! in yarn)|\bSt st\b|"
    r"\bstockinette|\bstocking st|\bgarter|\brib\b|\byo\b|\bkfb\b|\bm1\b"
)
"""Words of knitting; each find is one vote. Common practice, no source."""

CROCHET_WORDS = (
    r"\bchain\b|\bch\b|\bch[- ]?\d|\bsc\b|\bs c\b|\bd ?c\b|\bhdc\b|\bh?tr\b|\bsc2tog|\bsingle "
    r"crochet|"
    r"\bdouble crochet|\btrebles?\b|\bsl st (?:to|in)\b|\bmagic (?:ring|circle|loop)|\bMR\b"
    r"|\bhook\b|"
    r"\bfsc\b|\bsc\d|\d ?sc\b|\d ?dc\b|\bdoubles?\b|\bcrochet\b"
)
"""Words of crochet; each find is one vote. Common practice, no source."""
