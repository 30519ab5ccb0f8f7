"""A pattern looked for only in text that has a word it cannot do without."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from functools import lru_cache

ODD_LETTERS = str.maketrans({"\u0130": "i", "\u0131": "i", "\u017f": "s", "\u212a": "k"})
"""Letters that patterns blind to capitals take for plain ones, though lower() keeps them apart."""


@lru_cache(maxsize=16)
def lowered(text: str) -> str:
    """The text in small letters, as patterns blind to capitals see it; its length may change.
    Kept for a few texts: most passes over a text leave it as it is for the next.
    """
    return (text if text.isascii() else text.translate(ODD_LETTERS)).lower()


def has_any(text: str, pieces: tuple[str, ...]) -> bool:
    """Whether the text has one of the pieces, which are in small letters."""
    return any(map(lowered(text).__contains__, pieces))


class Sought:
    """A pattern, and pieces of text, in small letters, one of which every match of it holds.

    Most patterns stand in few texts, and that a piece is missing is found many times faster than
    that a pattern is. tests/architecture holds the pieces against the pattern.
    """

    __slots__ = ("needs", "shape")

    def __init__(self, needs: tuple[str, ...], shape: str, flags: int = 0) -> None:
        self.needs = needs
        self.shape = re.compile(shape, flags)

    def may_stand(self, text: str) -> bool:
        """Whether the text has one of the pieces."""
        return has_any(text, self.needs)

    def search(self, text: str) -> re.Match[str] | None:
        """As re.search."""
        return self.shape.search(text) if self.may_stand(text) else None

    def within(self, text: str, start: int, end: int) -> re.Match[str] | None:
        """As a compiled pattern's search, from one place of the text to another."""
        return self.shape.search(text, start, end) if self.may_stand(text[start:end]) else None

    def match(self, text: str) -> re.Match[str] | None:
        """As re.match."""
        return self.shape.match(text) if self.may_stand(text) else None

    def fullmatch(self, text: str) -> re.Match[str] | None:
        """As re.fullmatch."""
        return self.shape.fullmatch(text) if self.may_stand(text) else None

    def finditer(self, text: str) -> Iterator[re.Match[str]]:
        """As re.finditer."""
        return self.shape.finditer(text) if self.may_stand(text) else iter(())

    def findall(self, text: str) -> list[str]:
        """As re.findall, of a pattern with one group at most."""
        return self.shape.findall(text) if self.may_stand(text) else []

    def sub(self, new: str | Callable[[re.Match[str]], str], text: str) -> str:
        """As re.sub."""
        return self.shape.sub(new, text) if self.may_stand(text) else text
