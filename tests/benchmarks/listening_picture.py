"""The picture of a listening bench: what was not understood against other speech taken, as SVG."""

from __future__ import annotations

import math
from dataclasses import dataclass
from html import escape
from itertools import groupby

WIDTH, HEIGHT, EDGE = 560, 380, 56
MOST = 4_000.0
"""Moves an hour at the right edge; the scale is logarithmic, with nought at the left edge."""
COLOURS = ("#1f5fa8", "#c05020", "#2c7a3f", "#7a3f8f", "#8a6d1a")
GRID = (0, 1, 10, 100, 1_000)
AXIS = "clips of other speech taken for a command, an hour of speech"


@dataclass(frozen=True, slots=True)
class Mark:
    """One point: whose it is, for which words, other speech taken an hour, per cent not understood.
    """

    who: str
    words: str
    taken: float
    wrong: float


def across(taken: float) -> float:
    """Where so many an hour lie from left to right."""
    share = math.log10(1 + min(taken, MOST)) / math.log10(1 + MOST)
    return EDGE + share * (WIDTH - 2 * EDGE)


def down(wrong: float) -> float:
    """Where so many per cent lie from the top: 0 at the foot."""
    return HEIGHT - EDGE - wrong / 100 * (HEIGHT - 2 * EDGE)


def draw(marks: list[Mark]) -> str:
    """The picture: a line through the points of one ear and set of words, filled or open dots by
    words; the lower left is where an ear should be."""
    kinds = list(dict.fromkeys(mark.who for mark in marks))
    sets = list(dict.fromkeys(mark.words for mark in marks))
    parts = [*_frame(), *_names(kinds, sets)]
    for (who, words), group in groupby(marks, key=lambda mark: (mark.who, mark.words)):
        colour = COLOURS[kinds.index(who) % len(COLOURS)]
        dots = [(across(mark.taken), down(mark.wrong)) for mark in group]
        line = " ".join(f"{x:.1f},{y:.1f}" for x, y in dots)
        fill = colour if sets.index(words) == 0 else "white"
        parts.append(f'<polyline points="{line}" fill="none" stroke="{colour}"/>')
        for x, y in dots:
            parts.append(
                f'<circle cx="{x:.1f}" cy="{y:.1f}" r="4" fill="{fill}" stroke="{colour}"/>'
            )
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{WIDTH}" height="{HEIGHT}" '
        'font-family="sans-serif" font-size="11"><rect width="100%" height="100%" fill="white"/>'
        f"{''.join(parts)}</svg>\n"
    )


def _text(x: float, y: float, words: str, colour: str = "black") -> str:
    return f'<text x="{x:.0f}" y="{y:.0f}" fill="{colour}">{escape(words)}</text>'


def _frame() -> list[str]:
    foot, right = HEIGHT - EDGE, WIDTH - EDGE
    parts = [_text(EDGE, HEIGHT - 14, AXIS)]
    parts.append(_text(8, EDGE - 14, "% of commands not understood"))
    for taken in GRID:
        x = across(taken)
        parts.append(f'<path d="M{x:.1f} {EDGE}V{foot}" stroke="#ddd"/>')
        parts.append(_text(x - 4, foot + 16, str(taken)))
    for wrong in range(0, 101, 20):
        y = down(wrong)
        parts.append(f'<path d="M{EDGE} {y:.1f}H{right}" stroke="#ddd"/>')
        parts.append(_text(EDGE - 26, y + 4, str(wrong)))
    return parts


def _names(kinds: list[str], sets: list[str]) -> list[str]:
    out = []
    for n, who in enumerate(kinds):
        out.append(_text(WIDTH - 240, EDGE + 16 * n, who, COLOURS[n % len(COLOURS)]))
    for n, words in enumerate(sets):
        dot = "filled" if n == 0 else "open"
        out.append(_text(WIDTH - 240, EDGE + 16 * (len(kinds) + n), f"{dot}: {words}"))
    return out
