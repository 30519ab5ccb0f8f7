"""Weights of few bits, as they stand in a file -> matrices of floats; pure.

A matrix is cut into groups along its rows, each with a scale; every number is a whole one times the
scale of its group. Numbers of four bits stand two in a byte, the first in the lower half, each with
8 added; others each in a byte of their own.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float32]
_CODES = np.arange(256)
_PAIRS = (np.stack([_CODES & 15, _CODES >> 4], 1).astype(np.float32) - 8).view(np.complex64)[:, 0]
"""What each byte of two numbers holds, both as one so that they are moved at once."""


def matrices(weights: Mapping[str, NDArray[Any]]) -> dict[str, Floats]:
    """Every array by its name, what is a scale put to its matrix.

    ".scale" behind a matrix's name: [rows, groups]. A matrix of four bits: uint8 [rows, n / 2];
    ValueError where numbers and scales don't agree.
    """
    names = [name for name in weights if not name.endswith(".scale")]
    return {name: _plain(weights[name], weights.get(name + ".scale")) for name in names}


def _plain(array: NDArray[Any], scale: NDArray[Any] | None) -> Floats:
    if scale is None:
        return np.asarray(array, np.float32)
    pairs = array.dtype == np.uint8
    numbers = _PAIRS[array].view(np.float32) if pairs else array.astype(np.float32)
    shape = (len(array), -1) if pairs else array.shape
    groups = numbers.reshape(*scale.shape, -1)
    groups *= scale.astype(np.float32)[..., None]
    return np.asarray(groups.reshape(shape))
