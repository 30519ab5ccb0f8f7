"""LineSource: reads what is typed, as single keys from a terminal and as lines from anything else, until woken."""

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

END = "ctrl+d"
WORDS_KEYS = (":", "f3")
"""Keys that begin a line of words where single keys are read."""


class LineSource:
    """Typed keys and words. Only `wake` may be called from another thread."""

    def __init__(self, stream: TextIO, single_keys: bool) -> None:
        self._stream = stream
        self._single_keys = single_keys
        self._woken, self._wake = os.pipe()
        self._decoder = codecs.getincrementaldecoder("utf-8")("replace")
        self._rest = ""

    def wake(self) -> None:
        """Ends reading at once."""
        os.write(self._wake, b".")

    def typed(self) -> Iterator[str | Words]:
        """Keys and words as they are typed, "ctrl+d" once at the end of the stream, then nothing until woken."""
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
        select.select([self._woken], [], [])

    def _piece(self, descriptor: int) -> str | None:
        """What came next; "" at the end of the stream, None when woken."""
        ready, _, _ = select.select([descriptor, self._woken], [], [])
        if self._woken in ready:
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
        before = termios.tcgetattr(descriptor)
        tty.setcbreak(descriptor)
        try:
            while (piece := self._piece(descriptor)) is not None:
                for key in from_keys(piece):
                    yield self._words(descriptor, before) if key in WORDS_KEYS else key
                if piece == "":
                    yield from self._the_end()
                    return
        finally:
            termios.tcsetattr(descriptor, termios.TCSADRAIN, before)

    def _words(self, descriptor: int, cooked: list[object]) -> str | Words:
        """A line of words, typed with echo and the terminal's own corrections."""
        termios.tcsetattr(descriptor, termios.TCSADRAIN, cooked)
        try:
            print("Type words, then enter:", file=sys.stdout, flush=True)
            line = self._piece(descriptor) or ""
        finally:
            tty.setcbreak(descriptor)
        return from_line(line) if line.strip() else "escape"
