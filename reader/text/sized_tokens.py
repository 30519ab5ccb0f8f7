"""A text -> its numbers, its names of sizes, its words and its marks, in their order."""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import lru_cache

from reader.terms.numbers import SPELLED
from reader.text.size_names import name_shape


@dataclass(frozen=True, slots=True)
class Token:
    """One of them: kind "name", "number", "word", "line" or "mark", and where it stands."""

    kind: str
    text: str
    start: int
    end: int


@lru_cache(maxsize=4)
def tokens_of(text: str) -> tuple[Token, ...]:
    """All tokens of the text; kept for a few texts, which are read once for each size."""
    shape = re.compile(
        rf"(?P<name>(?<![\w'’-])(?:{name_shape(text)}))"
        r"|(?P<stitch>\b[kp](?=\d))"
        r"|(?P<number>(?:(?<![\w.])|(?<=\b[kp]))"
        rf"(?:\d+(?:\.\d+)?(?: ?[½¼¾])?(?![\w½])|[½¼¾]|(?:{SPELLED})))"
        r"|(?P<word>[\w'’.]*[\w'’])|(?P<line>\n[ \t]*)|(?P<mark>[^\w\s])",
        re.IGNORECASE,
    )
    return tuple(
        Token(one.lastgroup or "mark", one.group(), one.start(), one.end())
        for one in shape.finditer(text)
    )
