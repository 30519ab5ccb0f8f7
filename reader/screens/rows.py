"""Rows: coloured runs of text, and texts broken into terminal rows by the columns they take."""

from __future__ import annotations

from dataclasses import dataclass

from rich.cells import cell_len, set_cell_size


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


def margin(width: int) -> int:
    """Empty columns at the left and right edge."""
    return 0 if width < 40 else 1 if width < 80 else 2


def broken(text: str, width: int) -> list[str]:
    """The text in lines of at most `width` columns, broken at spaces, words longer than a line within; [] for none."""
    lines: list[str] = []
    for word in visible(text).split():
        if lines and cell_len(lines[-1]) + 1 + cell_len(word) <= width:
            lines[-1] = f"{lines[-1]} {word}"
            continue
        *full, rest = _chopped(word, max(1, width))
        lines += [*full, rest]
    return lines


def cut(text: str, width: int) -> str:
    """The text in one line of at most `width` columns; three dots stand where words were left out."""
    plain = " ".join(visible(text).split())
    if cell_len(plain) <= width:
        return plain
    if width <= 3:
        return set_cell_size(plain, max(0, width))
    first = broken(plain, width - 3)
    return (first[0] if first else "") + "..."


def visible(text: str) -> str:
    """The text without characters that would move the cursor or turn the line around."""
    return "".join(letter if letter.isprintable() or letter.isspace() else " " for letter in text)


def _chopped(word: str, width: int) -> list[str]:
    pieces, piece = [], ""
    for letter in word:
        if piece and cell_len(piece + letter) > width:
            pieces.append(piece)
            piece = ""
        piece += letter
    return [*pieces, piece]
