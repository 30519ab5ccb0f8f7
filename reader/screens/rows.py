"""Rows: coloured runs of text, and texts broken into terminal rows by the columns they take."""

from __future__ import annotations

from dataclasses import dataclass

from rich.cells import cell_len, set_cell_size

from reader.wording.show import one_line


@dataclass(frozen=True, slots=True)
class Run:
    """A stretch of text in one role; role is the name of a pair in the palette's looks."""

    text: str
    role: str
    strong: bool = False


Row = tuple[Run, ...]
"""One terminal row, left to right."""


def columns(row: Row) -> int:
    """Terminal columns a row takes."""
    return sum(cell_len(run.text) for run in row)


def clipped(row: Row, width: int) -> Row:
    """The row within `width` columns; what is beyond the edge is left off."""
    kept: list[Run] = []
    left = width
    for run in row:
        size = cell_len(run.text)
        if size > left:
            kept.append(Run(set_cell_size(run.text, left), run.role, run.strong))
            break
        kept.append(run)
        left -= size
    return tuple(kept)


def margin(width: int) -> int:
    """Empty columns at the left and right edge."""
    return 0 if width < 40 else 1 if width < 80 else 2


def broken(text: str, width: int) -> list[str]:
    """The text in lines of at most `width` columns, broken at spaces, words longer than a line
    within; [] for none.
    """
    lines: list[str] = []
    for word in one_line(text).split():
        if lines and cell_len(lines[-1]) + 1 + cell_len(word) <= width:
            lines[-1] = f"{lines[-1]} {word}"
            continue
        *full, rest = _chopped(word, max(1, width))
        lines += [*full, rest]
    return lines


def cut(text: str, width: int) -> str:
    """The text in one line of at most `width` columns; three dots stand for words left out."""
    plain = one_line(text)
    if cell_len(plain) <= width:
        return plain
    if width <= 3:
        return set_cell_size(plain, max(0, width))
    first = broken(plain, width - 3)
    return (first[0] if first else "") + "..."


def _chopped(word: str, width: int) -> list[str]:
    pieces, piece = [], ""
    for letter in word:
        if piece and cell_len(piece + letter) > width:
            pieces.append(piece)
            piece = ""
        piece += letter
    return [*pieces, piece]
