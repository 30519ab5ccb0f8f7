"""Time in proportion to a text's length, whatever its shape."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from tests.benchmarks.scaling import fourfold
from tests.benchmarks.shapes import SHAPES

SQUARE = 9
"""Between 4, in proportion, and 16, in the square, with room for a busy machine."""


@pytest.mark.parametrize("shape", SHAPES, ids=lambda shape: shape.__name__)
def test_in_proportion(shape: Callable[[int], str]) -> None:
    """Four times the text takes far less than sixteen times the time."""
    for length in (100, 200, 400):
        # A text that is read within a few milliseconds tells nothing.
        once, times = fourfold(shape, length)
        if once > 0.03:
            break
    for _ in range(2):
        # A busy machine slows one of the two now and then; a square grows so every time.
        times = min(times, fourfold(shape, length)[1]) if times >= SQUARE else times
    assert times < SQUARE
