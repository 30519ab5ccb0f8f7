"""PlainScreen: append-only lines, one fact a line, nothing drawn twice; for screen readers, pipes
and old terminals.
"""

from __future__ import annotations

import os
import sys
import threading
import unicodedata
from typing import TextIO

from reader.screens.line_source import END, LineSource
from reader.screens.port import OnKey, OnWords
from reader.screens.typed import Words
from reader.wording.show import news, one_line
from reader.wording.shown import Shown

HELP = ("f1", "help", "keys")
"""What asks for the list of words and keys."""
LINES_HELP = (
    "Where lines are typed: the words, or the key, then enter; a number alone answers a question; "
    "key 3 presses the key 3."
)


class PlainScreen:
    """Keeps ScreenPort with lines on a stream. Words that were just printed are not printed again
    as a fact.
    """

    def __init__(
        self,
        source: TextIO | None = None,
        out: TextIO | None = None,
        help_lines: tuple[str, ...] = (),
    ) -> None:
        self._help_lines = help_lines
        self._out = sys.stdout if out is None else out
        source = sys.stdin if source is None else source
        self._source = LineSource(source, single_keys=_takes_single_keys(source))
        self._lock = threading.Lock()
        self._before: Shown | None = None
        self._recent = ""
        self._closed = threading.Event()
        self._broken = False

    def show(self, shown: Shown) -> None:
        """Prints what is new."""
        with self._lock:
            fresh = news(self._before, shown)
            self._before = shown
            for line in fresh:
                if not self._just_said(line.partition(": ")[2]):
                    self._print(line)

    def say_line(self, text: str) -> None:
        """Prints what the program says."""
        with self._lock:
            if one_line(text) and not self._just_said(text):
                self._print(f"Reader: {one_line(text)}")

    def heard_line(self, text: str) -> None:
        """Prints what was heard."""
        with self._lock:
            self._recent = ""
            if one_line(text):
                self._print(f"Heard: {one_line(text)}")

    def run(self, on_key: OnKey, on_words: OnWords | None = None) -> None:
        """Reads keys and words until `close`; control-C is the key "ctrl+c", a second one ends the
        program.
        """
        interrupted = False
        while not self._closed.is_set():
            try:
                for typed in self._source.typed():
                    self._give(typed, on_key, on_words)
                if self._broken and not self._closed.is_set():
                    on_key(END)
                    self._closed.wait()
                return
            except KeyboardInterrupt:
                if interrupted:
                    raise
                interrupted = True
                on_key("ctrl+c")

    def close(self) -> None:
        """Ends `run`."""
        if not self._closed.is_set():
            self._closed.set()
            self._source.wake()

    def _give(self, typed: str | Words, on_key: OnKey, on_words: OnWords | None) -> None:
        self._recent = ""
        asked = typed if isinstance(typed, str) else typed.text
        if asked in HELP and self._help_lines:
            self._help()
        elif isinstance(typed, str):
            on_key(typed)
        elif on_words is not None:
            on_words(typed.text)

    def _help(self) -> None:
        """What can be said and pressed, one request a line."""
        with self._lock:
            for line in (*self._help_lines, LINES_HELP):
                self._print(line)

    def _just_said(self, text: str) -> bool:
        words = _bare(text)
        return bool(words) and f" {words} " in f" {self._recent} "

    def _print(self, line: str) -> None:
        """One line out; where nobody reads any more, the program ends as at the end of typing."""
        self._recent = f"{self._recent} {_bare(line)}".strip()[-4000:]
        if self._broken:
            return
        try:
            self._out.write(writable(line, getattr(self._out, "encoding", None)) + "\n")
            self._out.flush()
        except (BrokenPipeError, ValueError):
            self._broken = True
            self._source.wake()


def writable(line: str, encoding: str | None) -> str:
    """The line in letters the stream can write: fractions and accents made plain, the rest as \\u
    codes.
    """
    try:
        line.encode(encoding or "utf-8")
    except (UnicodeEncodeError, LookupError):
        plain = unicodedata.normalize("NFKD", line).replace("⁄", "/")
        plain = "".join(letter for letter in plain if not unicodedata.combining(letter))
        return plain.encode("ascii", "backslashreplace").decode()
    return line


def _bare(text: str) -> str:
    """Small words without signs, to tell whether the same was said."""
    return " ".join("".join(c if c.isalnum() else " " for c in text.lower()).split())


def _takes_single_keys(source: TextIO) -> bool:
    return source.isatty() and os.environ.get("TERM", "dumb") not in ("", "dumb", "unknown")
