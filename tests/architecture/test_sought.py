"""Every match of a Sought pattern holds one of the pieces it is looked for by: read from the
pattern itself, whatever text it meets.
"""

from __future__ import annotations

import importlib
import pkgutil
import re
from re import _constants as op  # type: ignore[attr-defined]
from re import _parser as parser  # type: ignore[attr-defined]
from typing import Any

import pytest

import reader
from reader.text.sought import Sought, lowered

ANY = "\x00"
"""Stands for a character that is not known."""
FEW = 12
"""Characters of a set that are gone through one by one."""


def sought() -> dict[str, Sought]:
    """All such patterns of the program, by name."""
    found = {}
    for room in ("text", "pattern", "counts"):
        for one in pkgutil.iter_modules([f"{reader.__path__[0]}/{room}"]):
            module = importlib.import_module(f"reader.{room}.{one.name}")
            for name, value in vars(module).items():
                if isinstance(value, Sought):
                    found[f"{one.name}.{name}"] = value
    return found


class Without:
    """Follows a pattern along all texts it matches, and keeps the last characters of those that
    have none of the pieces.
    """

    def __init__(self, needs: tuple[str, ...]) -> None:
        self.needs = needs
        self.kept = max(map(len, needs)) - 1

    def add(self, tails: set[str], letter: str) -> set[str]:
        """The tails with one more character, without those that now hold a piece."""
        told = {tail + letter for tail in tails}
        bare = {one for one in told if not any(piece in one for piece in self.needs)}
        return {one[-self.kept :] if self.kept else "" for one in bare}

    def along(self, items: Any, tails: set[str]) -> set[str]:
        """The tails behind a list of a pattern's parts."""
        for kind, value in items:
            tails = self.one(kind, value, tails)
        return tails

    def one(self, kind: Any, value: Any, tails: set[str]) -> set[str]:
        """The tails behind one part."""
        if kind is op.LITERAL:
            return self.add(tails, lowered(chr(value)))
        if kind is op.IN:
            single = all(what is op.LITERAL for what, _ in value) and len(value) <= FEW
            letters = {lowered(chr(letter)) for _, letter in value} if single else {ANY}
            return set().union(*(self.add(tails, letter) for letter in letters))
        if kind is op.BRANCH:
            return set().union(*(self.along(branch, tails) for branch in value[1]))
        if kind is op.SUBPATTERN:
            return self.along(value[3], tails)
        if kind in (op.MAX_REPEAT, op.MIN_REPEAT):
            return self.repeat(*value, tails)
        if kind is op.ASSERT:
            ahead, inner = value
            # What is looked for ahead is in the text; what stands behind is known where a match
            # begins.
            if ahead > 0:
                return tails if self.along(inner, tails) else set()
            return self.along(inner, {""}) if tails == {""} else tails
        if kind in (op.AT, op.ASSERT_NOT):
            return tails
        return self.add(tails, ANY)

    def repeat(self, least: int, most: int, inner: Any, tails: set[str]) -> set[str]:
        """The tails behind a part that may stand so often."""
        for _ in range(least):
            tails = self.along(inner, tails)
        reached = tails
        for _ in range(min(int(most) - least, self.kept + 2)):
            tails = self.along(inner, tails)
            reached = reached | tails
        return reached


def holds(one: Sought) -> bool:
    """Whether no text matches without one of the pieces."""
    return not Without(one.needs).along(parser.parse(one.shape.pattern, one.shape.flags), {""})


@pytest.mark.parametrize("name", sorted(sought()))
def test_no_text_matches_without_a_piece(name: str) -> None:
    """The pieces leave no match out."""
    assert holds(sought()[name])


def test_a_piece_too_many_letters_long_is_found() -> None:
    """The check itself sees what is wrong."""
    assert holds(Sought(("ch-", "ch l"), r"\bch(?:[-]|(?= l))", re.IGNORECASE))
    assert not holds(Sought(("ch-",), r"\bch(?:[- ])"))
    assert not holds(Sought(("shells",), r"shells?"))


def test_letters_that_count_as_plain_ones() -> None:
    """A long s and a Kelvin sign are found as the engine finds them."""
    one = Sought(("skip",), "skip", re.IGNORECASE)
    for odd in ("\u017fkip", "s\u212aip", "sk\u0131p", "SK\u0130P"):
        assert (one.search(odd) is None) == (one.shape.search(odd) is None)
