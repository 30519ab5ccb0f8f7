"""Pictures of the screen: Textual's SVG in, an SVG that any renderer draws as a terminal would, and
a PNG of it.

Textual writes a row as one stretched text, in which some renderers swallow spaces, and block
characters as letters of a font, which leaves seams; here every word stands at its own column and
every block is a rectangle.
"""

from __future__ import annotations

import html
import re
import subprocess
from pathlib import Path

_TEXT = re.compile(
    r'<text class="(?P<style>[^"]+)" '
    r'x="(?P<x>[\d.]+)" y="(?P<y>[\d.]+)"[^>]*clip-path="[^"]*"[^>]*>'
    r"(?P<words>[^<]*)</text>"
)
_FILL = re.compile(r"\.(?P<style>[\w-]+) \{ fill: (?P<fill>#\w+)")
_CHROME = re.compile(r'<circle[^>]*/>|<text[^>]*-title"[^>]*>[^<]*</text>')
_BOX = re.compile(r'viewBox="0 0 (?P<wide>[\d.]+) (?P<high>[\d.]+)"')
_COLUMN, _ROW, _BASE = 12.2, 24.4, 20.0
_BLOCKS = {"█": (0.0, 1.0), "▀": (0.0, 0.5), "▄": (0.5, 0.5)}


def as_drawn_by_a_terminal(svg: str) -> str:
    """The same picture with words at their columns and blocks as rectangles, without a window's
    buttons.
    """
    fills = {found["style"]: found["fill"] for found in _FILL.finditer(svg)}
    placed = _TEXT.sub(lambda found: _placed(found, fills), svg)
    bare = _CHROME.sub("", placed)
    return _BOX.sub(
        lambda box: f'viewBox="0 34 {box["wide"]} {float(box["high"]) - 34:.1f}"', bare, 1
    )


def save_png(svg: str, path: Path, pixels_wide: int = 1400) -> None:
    """Writes the picture as PNG; needs rsvg-convert (Debian: librsvg2-bin)."""
    command = ["rsvg-convert", "-w", str(pixels_wide), "-o", str(path)]
    subprocess.run(command, input=as_drawn_by_a_terminal(svg).encode(), check=True, timeout=60)


def _placed(found: re.Match[str], fills: dict[str, str]) -> str:
    x, y = float(found["x"]), float(found["y"])
    words = html.unescape(found["words"]).rstrip("\n").replace("\u00a0", " ")
    pieces = []
    for piece in re.finditer(r"[^ █▀▄]+|[█▀▄]", words):
        at = x + _COLUMN * piece.start()
        if piece.group() in _BLOCKS:
            down, tall = _BLOCKS[piece.group()]
            top = y - _BASE + 1.5 + _ROW * down
            size = f'width="{_COLUMN + 0.3:.1f}" height="{_ROW * tall + 0.3:.2f}"'
            pieces.append(
                f'<rect x="{at:.1f}" y="{top:.2f}" {size} fill="{fills[found["style"]]}"/>'
            )
        else:
            text = html.escape(piece.group())
            pieces.append(f'<text class="{found["style"]}" x="{at:.1f}" y="{y}">{text}</text>')
    return "".join(pieces)
