"""Which words say that a text is crochet or knitting, and whether its crochet is in US or UK terms.
"""

from __future__ import annotations

from enum import Enum


class Terms(Enum):
    """Whose crochet words a pattern uses."""

    US = "US"
    UK = "UK"


KNITTING_WORDS = (
    r"\b(?:cast(?:ing)?[ -]?on\b|c[/.]?o\.? *\d|bind off\b|cast off\b|bo\b|purl|"
    r"knit (?!and crochet)|k\d|p\d|k \d|p \d|k2tog|ssk\b|skp\b|needles?\b(?! in yarn)|st st\b|"
    r"stockinette|stocking st|garter|rib\b|yo\b|kfb\b|m1\b)"
)
"""Words of knitting, in small letters; each find is one vote. Common practice, no source."""

CROCHET_WORDS = (
    r"\b(?:chain\b|ch\b|ch[- ]?\d|sc\b|s c\b|d ?c\b|hdc\b|h?tr\b|sc2tog|single crochet|"
    r"double crochet|trebles?\b|sl st (?:to|in)\b|magic (?:ring|circle|loop)|mr\b|hook\b|"
    r"fsc\b|sc\d|doubles?\b|crochet\b)|\d ?[sd]c\b"
)
"""Words of crochet, in small letters; each find is one vote. Common practice, no source."""
