"""Reads a Kaldi nnet3 model file (binary) into named components with their matrices.

The format is Kaldi's own: tokens end in a space, int32 and float are the byte 4 and four bytes,
double the byte 8 and eight, matrices "FM " with two int32, or packed ("CM "). Only what a small
chain model holds is read.
"""

from __future__ import annotations

import struct
from pathlib import Path

import numpy as np

from reader.listening.packed_matrix import unpacked

Component = dict[str, object]
PAIRS = {"<AlphaInOut>", "<RankInOut>"}
"""Tokens that are followed by two numbers."""


class _Bytes:
    def __init__(self, data: bytes, at: int) -> None:
        self.data, self.at = data, at

    def token(self) -> str:
        end = self.data.index(b" ", self.at)
        token, self.at = self.data[self.at : end].decode(), end + 1
        return token

    def number(self) -> int:
        value = struct.unpack_from("<i", self.data, self.at + 1)[0]
        self.at += 5
        return int(value)

    def matrix(self) -> np.ndarray:
        kind = self.token()
        rows = self.number()
        shape = (rows, self.number()) if kind[1] == "M" else (rows,)
        of = np.float32 if kind[0] == "F" else np.float64
        array = np.frombuffer(self.data, of, int(np.prod(shape)), self.at).reshape(shape)
        self.at += array.nbytes
        return array

    def value(self, token: str) -> object:
        start = self.data[self.at : self.at + 2]
        if start == b"CM":
            array, self.at = unpacked(self.data, self.at)
            return array
        if start in (b"FM", b"FV", b"DM", b"DV"):
            return self.matrix()
        if start[:1] == b"\x04" and token == "<TimeOffsets>":
            count = self.number()
            offsets = np.frombuffer(self.data, np.int32, count, self.at).tolist()
            self.at += 4 * count
            return offsets
        if start[:1] == b"\x04":
            value = struct.unpack_from("<f", self.data, self.at + 1)[0]
            self.at += 10 if token in PAIRS else 5
            return value
        if start[:1] == b"\x08":
            value = struct.unpack_from("<d", self.data, self.at + 1)[0]
            self.at += 9
            return value
        if start[:1] in (b"T", b"F"):
            self.at += 1
            return start[:1] == b"T"
        return None


def read_components(path: Path) -> dict[str, Component]:
    """Components by name: their type and every matrix, vector and number that stands in the file.
    """
    data = path.read_bytes()
    source = _Bytes(data, data.index(b"<NumComponents>"))
    source.token()
    components: dict[str, Component] = {}
    for _ in range(source.number()):
        source.token()
        name, kind = source.token(), source.token()
        component: Component = {"type": kind}
        while (token := source.token()) != "</" + kind[1:]:
            component[token] = source.value(token)
        components[name] = component
    return components
