"""Choose: which screen suits the terminal, so that nobody has to know."""

from __future__ import annotations

import codecs
import os
import sys
from typing import TextIO

from reader.screens.port import ScreenPort

_LINES_ONLY = ("", "dumb", "unknown")


def needs_plain(
    source: TextIO | None = None, out: TextIO | None = None, term: str | None = None
) -> bool:
    """True where a full screen cannot be drawn: a pipe or a file at either end, a terminal
    without a cursor, or one that cannot write block letters.
    """
    source = sys.stdin if source is None else source
    out = sys.stdout if out is None else out
    term = os.environ.get("TERM", "") if term is None else term
    if not (source.isatty() and out.isatty()) or term in _LINES_ONLY:
        return True
    return codecs.lookup(getattr(out, "encoding", None) or "ascii").name != "utf-8"


def choose_screen(
    plain: bool = False, look: str = "dark", help_lines: tuple[str, ...] = ()
) -> ScreenPort:
    """Plain lines where they are asked for or needed, else the full screen in this look ("dark" or
    "light").

    Colours are left out by themselves where the environment sets NO_COLOR (no-color.org).
    """
    if plain or needs_plain():
        from reader.screens.plain import PlainScreen

        return PlainScreen(help_lines=help_lines)
    from reader.screens.textual_app.full_screen import FullScreen

    return FullScreen(look, help_lines)
