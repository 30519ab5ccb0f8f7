"""Matrices in a byte for each number: by hand, and there and back through the recipe."""

from __future__ import annotations

import struct

import numpy as np
import pytest

from reader.listening.packed_matrix import unpacked


def test_a_column_is_read_between_its_marks() -> None:
    """Least -1, range 2; marks at -1, -0.5, 0.5 and 1; bytes at the marks and between them."""
    marks = [round(65_535 * share) for share in (0, 0.25, 0.75, 1)]
    codes = bytes([0, 32, 64, 128, 192, 255])
    content = b"CM " + struct.pack("<ffii4H", -1.0, 2.0, 6, 1, *marks) + codes
    matrix, end = unpacked(b"before" + content + b"behind", 6)
    assert end == 6 + len(content)
    assert matrix.shape == (6, 1)
    assert np.abs(matrix[:, 0] - [-1, -0.75, -0.5, 0, 0.5, 1]).max() < 1e-4


def test_what_ends_too_soon_is_refused() -> None:
    """Half a matrix is an error, never a smaller one."""
    content = b"CM " + struct.pack("<ffii4H", -1.0, 2.0, 6, 1, 0, 1, 2, 3) + b"\0"
    with pytest.raises(ValueError, match="buffer"):
        unpacked(content, 0)
    with pytest.raises(struct.error):
        unpacked(content[:12], 0)


def test_what_is_written_is_read_back_and_written_the_same() -> None:
    """To a hundredth of a column's own spread, whatever its size; columns all alike too."""
    pytest.importorskip("torch")
    from models.recipe.export import matrix

    chance = np.random.default_rng(2)
    values = chance.standard_normal((400, 30)) * chance.uniform(0.01, 1, 30)
    values[:, 3], values[:, 4] = 0.0, 0.125
    written = matrix(values)
    back, end = unpacked(written, 0)
    assert end == len(written) < 400 * 30 + 9 * 30
    assert (np.abs(back - values).max(0) <= 0.03 * values.std(0) + 1e-4).all()
    assert (np.abs(back - values).mean(0) <= 0.01 * values.std(0) + 1e-4).all()
    assert matrix(back) == written
