"""Drawing: what a terminal shows, with its colour codes, in; an SVG of it out.

Block letters are drawn as rectangles, so that they join on every machine whatever its fonts.
"""

from __future__ import annotations

from collections.abc import Iterator
from xml.sax.saxutils import escape

from rich.console import Console
from rich.style import Style
from rich.terminal_theme import DEFAULT_TERMINAL_THEME
from rich.text import Text

WIDE, HIGH, EDGE = 10, 20, 12
"""Pixels of a cell, and of the frame around all."""

GROUND, INK = "#000000", "#dddddd"

BLOCKS = {
    "█": (0, 0, 1, 1),
    "▀": (0, 0, 1, 0.5),
    "▄": (0, 0.5, 1, 0.5),
    "▌": (0, 0, 0.5, 1),
    "▐": (0.5, 0, 0.5, 1),
}
"""Left, top, width and height of the ink, in shares of a cell (Unicode's Block Elements)."""

Cell = tuple[str, str, str, bool]
"""Letter, ink, ground, bold."""


def drawn(shown: str, columns: int) -> str:
    """SVG; shown: lines with ECMA-48 colour codes, as tmux captures them."""
    # Colours go on from line to line, so the lines are parted after they are read.
    lines = Text.from_ansi(shown.rstrip("\n")).split("\n", allow_blank=True)
    wide, high = columns * WIDE + 2 * EDGE, len(lines) * HIGH + 2 * EDGE
    parts = [
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {wide} {high}" width="{wide}">',
        f'<rect width="{wide}" height="{high}" rx="8" fill="{GROUND}"/>',
        '<g font-family="DejaVu Sans Mono, monospace" font-size="16" shape-rendering="crispEdges">',
    ]
    for row, line in enumerate(lines):
        parts += _line(list(_cells(line)), EDGE + row * HIGH)
    return "\n".join([*parts, "</g></svg>", ""])


def _cells(line: Text) -> Iterator[Cell]:
    console = Console()
    for at, letter in enumerate(line.plain):
        style = line.get_style_at_offset(console, at)
        ink, ground = _colour(style, True), _colour(style, False)
        if style.reverse:
            ink, ground = ground, ink
        yield letter, ink, ground, bool(style.bold)


def _colour(style: Style, ink: bool) -> str:
    colour = style.color if ink else style.bgcolor
    if colour is None or colour.is_default:
        return INK if ink else GROUND
    red, green, blue = colour.get_truecolor(DEFAULT_TERMINAL_THEME, foreground=ink)
    return f"#{red:02x}{green:02x}{blue:02x}"


def _line(cells: list[Cell], top: float) -> Iterator[str]:
    for at, (_, _, ground, _) in enumerate(cells):
        if ground != GROUND:
            yield f'<rect x="{EDGE + at * WIDE}" y="{top}" {_size(1, 1)} fill="{ground}"/>'
    for at, (letter, ink, _, _) in enumerate(cells):
        if letter in BLOCKS:
            left, down, wide, high = BLOCKS[letter]
            x, y = EDGE + (at + left) * WIDE, top + down * HIGH
            yield f'<rect x="{x:g}" y="{y:g}" {_size(wide, high)} fill="{ink}"/>'
    yield from _words(cells, top)


def _size(wide: float, high: float) -> str:
    return f'width="{wide * WIDE:g}" height="{high * HIGH:g}"'


def _words(cells: list[Cell], top: float) -> Iterator[str]:
    """Runs of letters of one colour, each laid on the cells that it takes."""
    start = 0
    while start < len(cells):
        end = start + 1
        while end < len(cells) and cells[end][1:] == cells[start][1:]:
            end += 1
        letters = "".join(" " if c[0] in BLOCKS else c[0] for c in cells[start:end])
        words = letters.strip()
        if words:
            x = EDGE + (start + len(letters) - len(letters.lstrip())) * WIDE
            bold = ' font-weight="bold"' if cells[start][3] else ""
            yield (
                f'<text x="{x}" y="{top + HIGH * 0.78:g}" textLength="{len(words) * WIDE}" '
                f'xml:space="preserve" fill="{cells[start][1]}"{bold}>{escape(words)}</text>'
            )
        start = end
