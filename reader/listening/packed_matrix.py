"""A Kaldi compressed matrix in a file's bytes -> its numbers, to a 250th of each column; pure.

"CM ", least value and range as floats, rows and columns as int32; for each column four marks of 16
bits in that range (its least, first quartile, third quartile, greatest), then column by column one
byte a number: 0 to 64 between the first two marks, to 192 between the middle ones, to 255 above.
Source: Kaldi, matrix/compressed-matrix.h, format kOneByteWithColHeaders.
"""

from __future__ import annotations

import struct

import numpy as np
from numpy.typing import NDArray

TOKEN = b"CM "
MARKS = (0.0, 64.0, 192.0, 255.0)
"""The bytes at which a column's four marks stand."""
HEADER = struct.Struct("<ffii")
FINEST = 65_535


def unpacked(content: bytes, at: int) -> tuple[NDArray[np.float32], int]:
    """The matrix [rows, columns] whose token stands at `at`, and where the next value begins;
    struct.error or ValueError where the bytes end before it."""
    at += len(TOKEN)
    least, reach, rows, columns = HEADER.unpack_from(content, at)
    at += HEADER.size
    marks = np.frombuffer(content, "<u2", 4 * columns, at).reshape(columns, 4)
    at += marks.nbytes
    codes = np.frombuffer(content, np.uint8, rows * columns, at).reshape(columns, rows)
    values = placed(codes.astype(np.float64), least + reach * (marks / FINEST), MARKS)
    return np.ascontiguousarray(values.T, np.float32), at + codes.nbytes


def placed(
    x: NDArray[np.float64],
    to: NDArray[np.float64] | tuple[float, ...],
    of: NDArray[np.float64] | tuple[float, ...],
) -> NDArray[np.float64]:
    """[n, m] numbers carried from the four marks `of` to the marks `to`, [n, 4] or one for all:
    straight between each two of them."""
    ends = np.ascontiguousarray(np.broadcast_to(to, (len(x), 4)))
    starts = np.ascontiguousarray(np.broadcast_to(of, (len(x), 4)))
    # Where each number's lower mark stands among all of them: taken from one line, which is quick.
    part = 4 * np.arange(len(x))[:, None] + (x > starts[:, 1:2]) + (x > starts[:, 2:3])
    low, down = starts.take(part), ends.take(part)
    part += 1
    share = x - low
    share /= np.maximum(starts.take(part) - low, 1e-30)
    np.clip(share, 0.0, 1.0, out=share)
    return np.asarray(down + (ends.take(part) - down) * share)
