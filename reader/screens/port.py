"""ScreenPort: what the loop asks of a screen; the full screen and the plain lines keep it."""

from __future__ import annotations

from collections.abc import Callable
from typing import Protocol

from reader.wording.shown import Shown

OnKey = Callable[[str], None]
"""Gets the name of a key the maker pressed.

A printable key is its own character ("n", "?", "5"); the others are "space", "enter", "escape",
"tab", "backspace", "delete", "insert", "up", "down", "left", "right", "home", "end", "pageup",
"pagedown", "f1" to "f12"; with the control key held down "ctrl+" stands before ("ctrl+n"). Small
letters unless shifted.
"""

OnWords = Callable[[str], None]
"""Gets words the maker typed instead of speaking, small letters, single spaces ("go to row five").
"""


class ScreenPort(Protocol):
    """A screen. `run` blocks in the main thread; everything else may be called from any thread, at
    any time.

    Before `run` has begun and after `close`, show and the two lines are remembered or dropped,
    never an error.
    """

    def show(self, shown: Shown) -> None:
        """Makes this the present state; a screen may leave out what is replaced at once."""
        ...

    def say_line(self, text: str) -> None:
        """Shows what the program says, as text."""
        ...

    def heard_line(self, text: str) -> None:
        """Shows what was heard; for words that were not understood the text says so itself."""
        ...

    def run(self, on_key: OnKey, on_words: OnWords | None = None) -> None:
        """Gives keys and typed words to the callbacks until `close`, or until the terminal's end is
        reached.

        At the terminal's end (control-D, a closed pipe) the key "ctrl+d" is given once, then
        `close` is waited for.
        """
        ...

    def close(self) -> None:
        """Ends `run`; may be called twice."""
        ...
