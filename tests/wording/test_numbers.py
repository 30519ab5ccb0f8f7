"""Numbers in words."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from reader.terms.numbers import TENS, UNITS
from reader.wording.numbers import (
    decimal_words,
    mixed_words,
    number_words,
    ordinal_words,
    times_words,
)


@pytest.mark.parametrize(
    ("number", "words"),
    [
        (0, "zero"),
        (13, "thirteen"),
        (24, "twenty-four"),
        (40, "forty"),
        (100, "one hundred"),
        (105, "one hundred and five"),
        (1200, "one thousand two hundred"),
        (2026, "two thousand and twenty-six"),
        (-3, "minus three"),
        (1234567, "one two three four five six seven"),
    ],
)
def test_counts(number: int, words: str) -> None:
    """As they are said."""
    assert number_words(number) == words


@given(st.integers(0, 99))
def test_words_read_back(number: int) -> None:
    """The words of a number below a hundred give it back through the pattern's own table of
    words.
    """
    value = sum({**UNITS, **TENS}[word] for word in number_words(number).split("-"))
    assert value == number


@pytest.mark.parametrize(
    ("number", "words"),
    [
        (1, "first"),
        (2, "second"),
        (3, "third"),
        (5, "fifth"),
        (8, "eighth"),
        (9, "ninth"),
        (12, "twelfth"),
        (20, "twentieth"),
        (21, "twenty-first"),
        (100, "one hundredth"),
    ],
)
def test_ordinals(number: int, words: str) -> None:
    """As they are said."""
    assert ordinal_words(number) == words


def test_parts_and_times() -> None:
    """Fractions, decimals, and how often."""
    assert mixed_words(5, "½") == "five and a half"
    assert mixed_words(0, "¾") == "three quarters"
    assert mixed_words(10, "1/8") == "ten and an eighth"
    assert decimal_words("4.0") == "four"
    assert decimal_words("3.25") == "three point two five"
    assert [times_words(n) for n in (1, 2, 6)] == ["once", "twice", "six times"]
