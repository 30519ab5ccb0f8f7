"""Large letters are all there, of one height, and wrap like words."""

from __future__ import annotations

import string

import pytest
from hypothesis import given
from hypothesis import strategies as st

from reader.screens import letters

DRAWN = string.ascii_letters + string.digits + ".,:;!?'\"-()[]/*+=×&%#$"


@pytest.mark.parametrize("letter", DRAWN)
def test_each_letter_is_drawn_and_its_own(letter: str) -> None:
    """No letter is missing, empty, ragged, or the same as another."""
    rows = letters.draw(letter)
    assert len(rows) == letters.HEIGHT
    assert {len(row) for row in rows} == {letters.width(letter)}
    assert any(row.strip() for row in rows)
    same = [other for other in DRAWN if letters.draw(other) == rows and other != letter]
    assert same == []


def test_the_letters_that_are_taken_for_one_another_differ() -> None:
    """Capital I, small l and one; six and eight; the usual traps of small type."""
    for trap in ("Il1|i", "68B", "5S", "2Z", "rn m"):
        drawn = [letters.draw(letter) for letter in trap if letter in DRAWN]
        assert len(set(drawn)) == len(drawn)


def test_a_word_as_picture() -> None:
    """One word, drawn as it should look."""
    assert letters.draw("sc 2") == (
        "            ▄▀▀▄",
        "▄▀▀▀ ▄▀▀▀     ▄▀",
        " ▀▀▄ █      ▄▀  ",
        "▀▀▀   ▀▀▀   ▀▀▀▀",
        "                ",
    )


def test_twice_as_large_is_whole_cells() -> None:
    """Scale two is as wide and as high again."""
    rows = letters.draw("i", 2)
    assert rows[0] == "██"
    assert len(rows) == 2 * letters.HEIGHT


@pytest.mark.parametrize(("text", "plain"), [("½ “st”", '1/2 "st"'), ("purlé – k", "purle - k")])
def test_typographic_signs_become_plain(text: str, plain: str) -> None:
    """Fractions, quotes, dashes and accents can be shown large."""
    assert letters.spelt_large(text) == plain


def test_a_letter_that_is_not_drawn_is_said_so() -> None:
    """Nothing is left out silently: the caller falls back to ordinary type."""
    assert letters.spelt_large("針 2") is None
    assert letters.wrap("針 2", 80) is None


@given(st.text(alphabet=DRAWN + " ", max_size=80), st.integers(1, 200), st.integers(1, 3))
def test_wrapping_keeps_every_word_and_the_width(text: str, columns: int, scale: int) -> None:
    """Lines fit, and together they say the same words."""
    lines = letters.wrap(text, columns, scale)
    if lines is None:
        assert any(letters.width(word, scale) > columns for word in text.split())
        return
    assert " ".join(lines).split() == text.split()
    for line in lines:
        assert {len(row) for row in letters.draw(line, scale)} == {letters.width(line, scale)}
        assert letters.width(line, scale) <= columns
