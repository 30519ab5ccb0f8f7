"""Clean text -> the same text, length kept, with a foundation that is told as a number read as its
chain: "Foundation ch: 24" -> "ch 24".
"""

from __future__ import annotations

import re

FOUNDATION = re.compile(
    r"^(?P<lead>[ \t]*)(?:foundation|starting|start|beginning|beg|base)[ -]?(?:ch(?:ain)?s?)?"
    r"[ ]?[:=—-][ ]?(?P<n>\d{1,4})(?:[ ]?ch(?:ain)?s?)?(?=[ ]*(?:[.(;,\n]|$))",
    re.IGNORECASE | re.MULTILINE,
)


BY_CHAINING = re.compile(
    r"^(?P<lead>[ \t]*)(?:start|begin)(?:ning|ing)?(?: off)?(?: by| with)?(?: making)?"
    r" (?:chaining|a chain of|a ch of|chains? of)[ ](?P<n>\d{1,4})"
    r"(?P<more>[ ]?(?:plus|\+)[ ]?\d{1,2})?",
    re.IGNORECASE | re.MULTILINE,
)
"""The foundation told as what is done first: "Start by chaining 25 plus 2"."""


def with_chain(text: str) -> str:
    """The text with such lines as a chain of so many; any other text as it is."""
    text = BY_CHAINING.sub(
        lambda m: f"{m['lead']}ch {m['n']}{m['more'] or ''}".ljust(len(m.group())), text
    )
    return FOUNDATION.sub(lambda m: f"{m['lead']}ch {m['n']}".ljust(len(m.group())), text)
