"""Totals that old books tell in the middle of a round, "to number altogether 8 trebles", "and so on
until you have 12 dc, counting the chain", put in brackets; length kept.
"""

from __future__ import annotations

import re

from reader.text.sought import has_any

_KIND = (
    r"(?:(?:double |single |half[- ]|long |plain )?(?:trebles?|doubles|crochets?|stitches|sts"
    r"|loops?|singles)|[dsh]\.? ?c\.?|h?tr\.?|d\.? ?tr\.?|tr\.? ?c\.?|plain|dc)"
)
_WITH = (
    r"(?:,?\s(?:including|counting|inclusive\sof|not\scounting|with)\s(?:the\s)?(?:first\s|\d+\s)?"
    r"ch(?:ains?)?(?:\sas\s(?:one|1|a\s\w+))?)?"
)
TOLD = re.compile(
    rf"(?:\bto\s(?:number|count|make)|\bnumbering|\bso\sas\sto\s(?:make|have|number)"
    rf"|(?P<go>\band\sso\son,?\s)(?:un)?till?\s(?:you\shave|there\sare)"
    rf"|\bwhich\s(?:makes|gives)|\bmaking|\bthere\sshould\sbe|(?<=[*,;.]))\s"
    rf"(?P<all>altogether\s|in\sall\s)?(?P<n>\d+)\s(?P<kind>{_KIND})\b"
    rf"(?P<over>,?\s(?:altogether|in\sall)\b)?(?P<with>{_WITH})(?=\s*(?:[.,;:)]|$))",
    re.IGNORECASE,
)


SURE = (
    "altogether", "in all", "in\nall", "so on", "so\non", "includ", "counting", "inclusive", "with",
)  # fmt: skip
"""Without one of these no number is surely a total: sooner looked for than all of TOLD."""


def in_brackets(text: str) -> str:
    """The text so told; any text goes in."""
    return TOLD.sub(_bracketed, text) if has_any(text, SURE) else text


def _bracketed(found: re.Match[str]) -> str:
    if not (found["all"] or found["over"] or found["with"] or found["go"]):
        return found.group()
    lead = found["go"] or ""
    total = f"({found['n']} {found['kind']})"
    return (lead + total).ljust(len(found.group()))
