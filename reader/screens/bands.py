"""Bands: what stands around the step, as rows: place, count, messages, state and keys."""

from __future__ import annotations

from collections.abc import Iterable

from rich.cells import cell_len

from reader.screens import letters
from reader.screens.rows import Row, Run, broken, columns, cut, margin
from reader.wording.shown import Ear, Shown

_MARKS = {Ear.LISTENING: "●", Ear.PAUSED: "‖", Ear.MUTED: "○", Ear.FINISHED: "■"}
"""A second sign beside the word, never instead of it."""


def head(shown: Shown, width: int, height: int) -> list[Row]:
    """The place in a band of its own, with the title above it where there is room."""
    if height < 4:
        return []
    rows = []
    if height >= 28 and shown.title:
        rows.append(_band([(shown.title, "place", False)], width))
    right = shown.passes
    left = ", ".join(words for words in (shown.part, shown.row) if words) or shown.title
    inner = width - 2 * margin(width)
    if cell_len(left) + 2 + cell_len(right) <= inner or not right:
        gap = " " * max(2, inner - cell_len(left) - cell_len(right))
        runs = [(cut(left, inner), "place", True)]
        runs += [(gap, "place", False), (right, "place", True)] if right else []
        rows.append(_band(runs, width))
    elif height >= 10:
        rows += [_band([(cut(words, inner), "place", True)], width) for words in (left, right)]
    else:
        short = ", ".join(words for words in (shown.row, right) if words)
        rows.append(_band([(cut(short, inner), "place", True)], width))
    return rows


def foot(shown: Shown, width: int, height: int) -> list[Row]:
    """State and what was heard, and the keys that make sense now."""
    rows = []
    if height >= 4:
        rows.append(_state(shown, width))
    if height >= 8 and shown.ready:
        rows += _keys(shown.ready, width, 2 if height >= 30 else 1)
    return rows


def count_ways(shown: Shown, width: int) -> list[list[Row]]:
    """The count from the largest way to show it to the smallest; the words are in each; [[]] for no
    count.
    """
    words = shown.count
    if not words:
        return [[]]
    side = margin(width)
    fitting = words if cell_len(words) <= width - 2 * side else words.partition(",")[0]
    line: list[Row] = [(Run(" " * side + cut(fitting, width - 2 * side), "count", True),)]
    bar = _bar(shown, width - 2 * side, " " * side)
    figures = _figures(shown, width - 2 * side, " " * side)
    ways = [[*figures, *bar, *line], [*figures, *line]] if figures else []
    return [*ways, [*bar, *line], line]


def _figures(shown: Shown, width: int, lead: str) -> list[Row]:
    """ "8 of 27" in large figures, [] where they don't fit."""
    if shown.done is None:
        return []
    words = f"{shown.done} of {shown.total}" if shown.total is not None else str(shown.done)
    if letters.width(words) > width:
        return []
    # Figures have nothing under the line, so their last row is empty.
    return [(Run(lead + row, "count", True),) for row in letters.draw(words)[:-1]]


def message_rows(shown: Shown, width: int, free: int) -> list[Row]:
    """A question, the last answer, trouble and notices, most urgent first; as many rows as the step
    can spare.
    """
    side = margin(width)
    step = len(broken(shown.step, width - 2 * side)) + (1 if shown.count else 0)
    spoken = free // 2 if shown.question or shown.answer else 0
    room = max(spoken, min(free // 2, free - step))
    rows: list[Row] = []
    for text, role in _messages(shown):
        lead = [] if not rows or free < 24 else [(Run("", "page"),)]
        strong = role != "page"
        lines = broken(text, width - 2 * side)
        rows += lead + [(Run(" " * side + line, role, strong),) for line in lines]
    if len(rows) <= room:
        return rows
    return [*rows[: room - 1], _shortened(rows[room - 1], width)] if room > 0 else []


def _messages(shown: Shown) -> Iterable[tuple[str, str]]:
    if shown.question:
        yield shown.question, "trouble"
    elif shown.answer:
        yield shown.answer, "page"
    for text in (*shown.trouble, *shown.notices):
        yield text, "notice"


def _shortened(row: Row, width: int) -> Row:
    """A row that ends in three dots, since more would follow."""
    text = "".join(run.text for run in row).rstrip()
    room = max(0, width - margin(width) - 3)
    return (Run(text[:room].rstrip() + "..."[: max(0, width)], row[0].role, row[0].strong),)


def _state(shown: Shown, width: int) -> Row:
    inner = width - 2 * margin(width)
    state = f"{_MARKS[shown.ear]} {shown.ear.value}"
    row: list[Run] = [Run(" " * margin(width) + cut(state, inner), "state", True)]
    left = inner - cell_len(state) - 2
    if shown.heard and left >= 8:
        row.append(Run("  " + cut(shown.heard, left), "quiet"))
    return tuple(row)


def _bar(shown: Shown, width: int, lead: str) -> list[Row]:
    """Done and left as a bar; the words under it say the same."""
    if not shown.total or shown.done is None or width < 10:
        return []
    length = min(width, 120)
    full = round(length * min(1.0, max(0.0, shown.done / shown.total)))
    return [(Run(lead + "█" * full, "count"), Run("░" * (length - full), "unfilled"))]


def _keys(ready: tuple[tuple[str, str], ...], width: int, most: int) -> list[Row]:
    """Keys and what they do, as many as fit whole; the last one, help, always."""
    *wanted, last = ready
    rows: list[list[Run]] = [[]]
    for key, does in (*wanted, last):
        piece = [Run(f" {key} ", "key_cap", True), Run(f" {does} ", "keys")]
        reserved = 0 if (key, does) == last or len(rows) < most else _key_width(*last)
        if columns((*rows[-1], *piece)) + reserved > width:
            if len(rows) == most and (key, does) != last:
                continue
            if len(rows) == most or not rows[-1]:
                break
            rows.append([])
        rows[-1] += piece
    return [(*row, Run(" " * (width - columns(tuple(row))), "keys")) for row in rows if row]


def _key_width(key: str, does: str) -> int:
    return cell_len(key) + cell_len(does) + 4


def _band(runs: list[tuple[str, str, bool]], width: int) -> Row:
    """Runs on a ground that goes from edge to edge."""
    row = [Run(" " * margin(width), "place"), *(Run(*run) for run in runs)]
    return (*row, Run(" " * max(0, width - columns(tuple(row))), "place"))
