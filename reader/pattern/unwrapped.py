"""Text whose paragraphs a printer wrapped -> the same text, length kept, with each paragraph on one
line, so that what is looked for in a sentence is found over a line's end too.
"""

from __future__ import annotations

import re

from reader.pattern.blocks import blocks
from reader.text.wrapped import is_wrapped


def unwrapped(text: str) -> str:
    """The text with those paragraphs unwrapped that are one block of lines of usual width."""
    out, at = [], 0
    for start, end in blocks(text):
        words = text[start:end]
        if "\n" in words and _is_alone(text, start, end) and is_wrapped(words.split("\n")):
            out.append(text[at:start])
            out.append(words.replace("\n", " "))
            at = end
    return "".join([*out, text[at:]])


ALONE_BEFORE = re.compile(r"(?:^|\n)[ \t]*\n[ \t]*$|^[ \t]*$")
ALONE_BEHIND = re.compile(r"[ \t]*(?:$|\n[ \t]*(?:\n|$))")
NEAR = 80


def _is_alone(text: str, start: int, end: int) -> bool:
    """Whether empty lines, or the text's ends, stand before and behind the block."""
    near = text[max(0, start - NEAR) : start]
    return ALONE_BEFORE.search(near) is not None and ALONE_BEHIND.match(text, end) is not None
