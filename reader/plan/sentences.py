"""Words between rows in, sentences short enough to be said one at a time out."""

from __future__ import annotations

import re

LONGEST = 24
"""Written words in one spoken sentence; about eight seconds at 170 words a minute. Our own
judgement.
"""

_END = re.compile(r"(?<=[.!?;])\s+(?=[\"'(*\[A-Z0-9])|\s*\n\s*(?=[-•*]|\d+[.)]\s)|\n\s*\n")
_SHORT_FORM = re.compile(
    r"(?:^|[\s(])(?:approx|incl|beg|rnds?|sts?|sps?|lps?|no|in|yds?|oz|alt|foll|rem|rep|inv|"
    r"[A-Z])\.$",
    re.IGNORECASE,
)


def sentences(text: str) -> tuple[str, ...]:
    """The sentences of any text in order, single-spaced; long ones are cut at a comma. () for no
    words.
    """
    found: list[str] = []
    for piece in _END.split(text.strip()):
        plain = " ".join(piece.split())
        if not plain:
            continue
        if found and _SHORT_FORM.search(found[-1]):
            found[-1] = f"{found[-1]} {plain}"
        else:
            found.append(plain)
    return tuple(short for long in found for short in _cut(long))


def _cut(sentence: str) -> list[str]:
    """The sentence in stretches of at most LONGEST words where its commas allow that."""
    if len(sentence.split()) <= LONGEST:
        return [sentence]
    made: list[str] = []
    for piece in re.split(r"(?<=[,;:])\s+(?![^(]*\))", sentence):
        if made and len(made[-1].split()) + len(piece.split()) <= LONGEST:
            made[-1] = f"{made[-1]} {piece}"
        else:
            made.append(piece)
    return made
