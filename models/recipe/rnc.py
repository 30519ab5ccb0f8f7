"""Unpacks RNC, method 1: the packing of game files of the nineties (Rob Northen Compression).

A stream: "RNC", the method, unpacked and packed size (32 bit, big-endian), CRC-16 of either, two
counts; then 16-bit little-endian words read bit by bit, lowest first. Each chunk brings three
Huffman tables (how many bytes follow as they are, how far back a copy lies, how long it is). The
layout is from memory; that it is right shows in the stream's own checksum, which must agree.
"""

from __future__ import annotations

import struct

HEADER = 18
Table = tuple[int, list[tuple[int, int]]]
"""Longest code and, for each value of that many bits, the code's length and its symbol."""


class _Bits:
    """The stream: bits and bytes are taken from it by turns."""

    def __init__(self, stream: bytes) -> None:
        self.stream, self.at = stream + bytes(8), HEADER
        self.left, self.count = 0, 0

    def _word(self) -> int:
        return self.stream[self.at] | self.stream[self.at + 1] << 8

    def take(self, count: int) -> int:
        """The next bits as a number."""
        while self.count < count:
            self.left |= self._word() << self.count
            self.count += 16
            self.at += 2
        value = self.left & ((1 << count) - 1)
        self.left >>= count
        self.count -= count
        return value

    def table(self) -> Table:
        """A Huffman table, read from the stream: the lengths of its codes, shortest codes first."""
        lengths = [self.take(4) for _ in range(self.take(5))]
        longest = max(lengths, default=0)
        places = [(0, 0)] * (1 << longest)
        code = 0
        for length in range(1, longest + 1):
            for symbol, own in enumerate(lengths):
                if own == length:
                    turned = int(format(code, f"0{length}b")[::-1], 2)
                    for above in range(1 << (longest - length)):
                        places[turned | above << length] = (length, symbol)
                    code += 1
            code <<= 1
        return longest, places

    def number(self, table: Table) -> int:
        """A number: its symbol says how many bits it has, the first of which is one."""
        longest, places = table
        seen = self.left | (self._word() << self.count if self.count < longest else 0)
        length, symbol = places[seen & ((1 << longest) - 1)]
        self.take(length)
        return symbol if symbol < 2 else 1 << (symbol - 1) | self.take(symbol - 1)

    def as_they_are(self, count: int) -> bytes:
        """Bytes that were not packed."""
        self.at += count
        return self.stream[self.at - count : self.at]


def _step(byte: int) -> int:
    for _ in range(8):
        byte = byte >> 1 ^ (0xA001 if byte & 1 else 0)
    return byte


STEPS = [_step(byte) for byte in range(256)]


def crc16(content: bytes | bytearray) -> int:
    """CRC-16 with the polynomial 0x8005, lowest bit first; "123456789" gives 0xBB3D."""
    crc = 0
    for byte in content:
        crc = crc >> 8 ^ STEPS[(crc ^ byte) & 0xFF]
    return crc


def unpacked(stream: bytes) -> bytes:
    """The content of a stream; ValueError where it is another method or its sums do not agree."""
    if stream[:4] != b"RNC\x01":
        raise ValueError(f"Not packed by RNC method 1: it begins with {stream[:4]!r}.")
    size, packed = struct.unpack(">II", stream[4:12])
    source, out = _Bits(stream[: HEADER + packed]), bytearray()
    source.take(2)
    for _ in range(stream[17]):
        raw, back, long = source.table(), source.table(), source.table()
        parts = source.take(16)
        for part in range(parts):
            out += source.as_they_are(source.number(raw))
            if part == parts - 1:
                break
            far, count = source.number(back) + 1, source.number(long) + 2
            for _ in range(count):
                out.append(out[-far])
    if len(out) != size or crc16(out) != int.from_bytes(stream[12:14], "big"):
        raise ValueError(f"Unpacked to {len(out)} bytes that do not agree with the stream's sums.")
    return bytes(out)
