"""LineSource: reads what is typed, as single keys from a terminal and as lines from anything else,
until woken.
"""

from __future__ import annotations

import codecs
import os
import select
import sys
import termios
import tty
from collections.abc import Iterator
from typing import TextIO

from reader.screens.typed import Words, from_keys, from_line

_Mode = list[int | list[bytes | int]]

END = "ctrl+d"
WORDS_KEYS = (":", "f3")
"""Keys that begin a line of words where single keys are read."""


class LineSource:
    """Typed keys and words. Only `wake` may be called from another thread."""

    def __init__(self, stream: TextIO, single_keys: bool) -> None:
        self._stream = stream
        self._single_keys = single_keys
        read, write = os.pipe()
        # As file objects, so that they close with this object even where nothing was ever read.
        self._woken, self._wake = os.fdopen(read, "rb", 0), os.fdopen(write, "wb", 0)
        self._decoder = codecs.getincrementaldecoder("utf-8")("replace")
        self._rest = ""

    def wake(self) -> None:
        """Ends reading at once."""
        self._wake.write(b".")

    def typed(self) -> Iterator[str | Words]:
        """Keys and words as they are typed, "ctrl+d" once at the end of the stream, then nothing
        until woken.
        """
        try:
            descriptor = self._stream.fileno()
        except (OSError, ValueError):
            yield from (from_line(line) for line in self._stream)
            yield from self._the_end()
            return
        if self._single_keys:
            yield from self._keys(descriptor)
        else:
            yield from self._lines(descriptor)

    def _the_end(self) -> Iterator[str]:
        yield END
        _wait_for(self._woken.fileno())

    def _piece(self, descriptor: int) -> str | None:
        """What came next; "" at the end of the stream, None when woken."""
        if self._woken.fileno() in _wait_for(descriptor, self._woken.fileno()):
            return None
        try:
            sent = os.read(descriptor, 4096)
        except OSError:
            return ""
        return self._decoder.decode(sent) or ("\0" if sent else "")

    def _lines(self, descriptor: int) -> Iterator[str | Words]:
        while (piece := self._piece(descriptor)) is not None:
            self._rest += piece.replace("\0", "")
            *whole, self._rest = self._rest.split("\n")
            yield from (from_line(line) for line in whole)
            if piece == "":
                if self._rest:
                    yield from_line(self._rest)
                yield from self._the_end()
                return

    def _keys(self, descriptor: int) -> Iterator[str | Words]:
        before: _Mode = termios.tcgetattr(descriptor)
        tty.setcbreak(descriptor, termios.TCSADRAIN)
        try:
            while (piece := self._piece(descriptor)) is not None:
                for key in from_keys(piece):
                    yield self._words(descriptor, before) if key in WORDS_KEYS else key
                if piece == "":
                    yield from self._the_end()
                    return
        finally:
            termios.tcsetattr(descriptor, termios.TCSADRAIN, before)

    def _words(self, descriptor: int, cooked: _Mode) -> str | Words:
        """A line of words, typed with echo and the terminal's own corrections."""
        termios.tcsetattr(descriptor, termios.TCSADRAIN, cooked)
        try:
            print("Type words, then enter:", file=sys.stdout, flush=True)
            line = self._piece(descriptor) or ""
        finally:
            tty.setcbreak(descriptor, termios.TCSADRAIN)
        return from_line(line) if line.strip() else "escape"


def _wait_for(*descriptors: int) -> set[int]:
    """Those that have something to read, or have ended; waits until one has."""
    waiting = select.poll()
    for descriptor in descriptors:
        waiting.register(descriptor, select.POLLIN)
    return {descriptor for descriptor, _ in waiting.poll()}
