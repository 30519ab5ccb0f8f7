"""Spoken numbers are shown as figures, and nothing else is touched."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from reader.wording.figures import in_figures
from reader.wording.numbers import number_words


@pytest.mark.parametrize(
    ("said", "shown"),
    [
        ("In each of the next twenty-seven stitches.", "In each of the next 27 stitches."),
        ("Single crochet two together.", "Single crochet 2 together."),
        ("Two hundred and five done.", "205 done."),
        ("In the second chain from the hook.", "In the second chain from the hook."),
        ("The twenty-second of thirty.", "The twenty-second of 30."),
        ("Someone often knits one.", "Someone often knits one."),
        ("Two point five inches.", "2.5 inches."),
        ("", ""),
    ],
)
def test_numbers_become_figures(said: str, shown: str) -> None:
    """Counts become figures; ordinals, "one" and words that hold a number's letters stay."""
    assert in_figures(said) == shown


@given(st.integers(2, 999))
def test_every_number_up_to_999(number: int) -> None:
    """What the voice says as a number stands on the screen as that number."""
    assert in_figures(f"now {number_words(number)} stitches") == f"now {number} stitches"


@given(st.text(max_size=100))
def test_any_text_is_taken(text: str) -> None:
    """No text is an error."""
    in_figures(text)
