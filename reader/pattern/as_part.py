"""Words that tell of a piece by one before it: "work same as back to armhole", "make the first 2
rounds as flower".
"""

from __future__ import annotations

import re

from reader.pattern.as_far import AS_FAR

AS_PART = re.compile(
    r"\b(?:work|make|worked|made|knit|complete|begin|start)\s+(?:exactly\s+|the\s+|to\s+)*"
    r"(?:same as|as for|as|like|match|correspond (?:to|with))\s+(?:for\s+)?(?:the\s+)?"
    r"(?P<name>[a-z]+(?: [a-z]+)??)(?:\s+(?:up )?(?:to|until|for|through)\b"
    r"|\s*[,:;.]?\s*(?:work\s+)?(?:the\s+first\b|(?:rows?|rounds?|rnds?)\s+\d)"
    r"|(?P<turned>),?\s+(?:but\s+)?(?:revers\w+|with\s+(?:all\s+)?shaping\w*\s+reversed|in\s+reverse)\b)",
    re.IGNORECASE,
)
"""So much of a piece before this one, or all of it turned about; one that is wholly like it needs
no rows of its own.
"""
FOLLOWED = re.compile(
    r"\W*(?:follow|see|use)\s+(?:the\s+)?(?P<name>[a-z]+(?: [a-z]+)??)(?:'s)?"
    r"\s+(?:rows?|rounds?|rnds?)\s+\d(?P<turned>(?!))?", re.IGNORECASE,
)
"""Rows of a piece before this one, named behind it: "follow head rounds 1-3"."""
FIRST_ROWS = re.compile(
    r"\W*(?:(?:with|using)\s[^.;:]{1,30}?\s)?(?:work|make|follow|repeat)\s+(?:the\s+)?(?:first|1st)"
    r"\s+[\w-]+\s+(?:rows?|rounds?|rnds?)\s+(?:same as|as|like|of)\s+(?:for\s+)?(?:the\s+)?"
    r"(?P<name>[a-z]+)\b(?P<turned>(?!))?", re.IGNORECASE,
)
"""So many rows of it: "make the first 2 rounds as flower"."""


def tells_as_part(words: str, names: set[str], crocheted: bool) -> bool:
    """Whether the words do so, with names of the pieces before, in small letters between spaces."""
    told = AS_PART.search(words), FOLLOWED.match(words), FIRST_ROWS.match(words)
    return any(
        found is not None
        and not (crocheted and found["turned"] is not None)
        and any(f" {found['name'].lower()} " in one for one in names)
        for found in (*told, AS_FAR.match(words))
    )
