"""The full stops of a text that stand behind a short word, each with the word before it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from string import ascii_letters

LONGEST = 8
"""Letters; longer words are no abbreviations."""


def short_words(text: str) -> Iterator[tuple[int, str, str]]:
    """For each such stop: its place, the word in small letters, and the two characters before the
    word (fewer at the beginning of the text).
    """
    at = -1
    for piece in text.split(".")[:-1]:
        at += len(piece) + 1
        end = piece[-LONGEST - 1 :]
        word = end[len(end.rstrip(ascii_letters)) :]
        if word and len(word) <= LONGEST:
            first = at - len(word)
            yield at, word.lower(), text[max(0, first - 2) : first]


def with_spaces(text: str, places: Sequence[int]) -> str:
    """The text with a space in each of those places."""
    if not places:
        return text
    out = list(text)
    for at in places:
        out[at] = " "
    return "".join(out)
