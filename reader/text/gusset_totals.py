"""Knitting text -> the same text, length kept, without the totals of a part of the row: "(6 thumb
sts)", "12 gusset sts", "14 sts between markers, 46 sts total". Only the whole row's total is left.
"""

from __future__ import annotations

import re

from reader.text.sought import Sought

_N = r"\d{1,3}(?:\s?[(\[][\d ,:;/-]+[)\]])?"
_STS = r"(?:sts?|stitches)"
_MARKERS = r"between\s+(?:(?:the|your|both|two|2|gusset|thumb)\s+)*(?:m\b|markers?)"
_OF_PART = (
    rf"{_N}\s+(?:(?:thumb|gusset)\s+){{1,2}}{_STS}(?:\s+{_MARKERS})?"
    rf"|{_N}\s+{_STS}\s+(?:{_MARKERS}|(?:for|in|on)\s+(?:the\s+)?(?:thumb|gusset)(?:\s+gusset)?)"
)
IN_BRACKETS = Sought(
    ("thumb", "gusset", "between"),
    rf"[(\[]\s*(?:{_OF_PART})\s*(?:[)\]]|[,;](?P<rest>\s*(?=\d)))",
    re.IGNORECASE,
)
BEHIND = Sought(
    ("thumb", "gusset", "between"),
    rf"(?P<at>(?:\s[-—=]+>?|[:;,]|(?<=[.)])))\s+"
    rf"(?:(?:there\s+are|you\s+(?:now\s+)?have)\s+)?(?:{_OF_PART})"
    r"(?P<end>\s*(?:\.|$|;))",
    re.IGNORECASE | re.MULTILINE,
)


def without_gusset_totals(text: str) -> str:
    """The text so put; any text goes in."""
    text = IN_BRACKETS.sub(_bracket, text)
    return BEHIND.sub(_stop, text)


def _bracket(found: re.Match[str]) -> str:
    opened = found.group()[0] if found["rest"] is not None else ""
    return opened.rjust(len(found.group()))


def _stop(found: re.Match[str]) -> str:
    end = found["end"].strip() or "."
    mark = "" if not found["at"].strip() else end
    return mark.ljust(len(found.group())) if found.group().strip() else found.group()
