"""Bands: what stands around the step, as rows: place, count, messages, state and keys."""

from __future__ import annotations

from collections.abc import Iterable

from rich.cells import cell_len

from reader.screens import letters
from reader.screens.rows import Row, Run, broken, columns, cut, margin
from reader.wording.show import one_line
from reader.wording.shown import Ear, Shown

LARGE_ALL_ROWS = 36
"""Rows of a terminal from which on the place is drawn large as well."""

_MARKS = {Ear.LISTENING: "●", Ear.PAUSED: "||", Ear.MUTED: "○", Ear.FINISHED: "■"}
"""A second sign beside the word, never instead of it."""


def head(shown: Shown, width: int, height: int) -> list[Row]:
    """The place in a band of its own, with the title above it where there is room."""
    if height < 4:
        return []
    large = _large_place(shown, width) if height >= LARGE_ALL_ROWS else []
    if large:
        # The same in plain letters beside the title, for whoever searches or copies the screen.
        return [_two_ends(shown.title, shown.place, width), *large]
    rows = [_two_ends(shown.title, "", width)] if height >= 28 and shown.title else []
    left = ", ".join(words for words in (shown.part, shown.row) if words) or shown.title
    inner = width - 2 * margin(width)
    if cell_len(left) + 2 + cell_len(shown.passes) <= inner or not shown.passes:
        return [*rows, _two_ends(left, shown.passes, width, True)]
    if height >= 10:
        return [*rows, *(_two_ends(words, "", width, True) for words in (left, shown.passes))]
    short = ", ".join(words for words in (shown.row, shown.passes) if words)
    return [*rows, _two_ends(short, "", width, True)]


def _two_ends(left: str, right: str, width: int, strong: bool = False) -> Row:
    """One text at the left edge, another at the right where it fits whole."""
    inner = width - 2 * margin(width)
    gap = inner - cell_len(left) - cell_len(right)
    if not right or gap < 2:
        return _band([(cut(left, inner), "place", strong)], width)
    return _band(
        [(left, "place", strong), (" " * gap, "place", False), (right, "place", True)], width
    )


def _large_place(shown: Shown, width: int) -> list[Row]:
    """Part, row and pass in large letters, the pass in plain ones where it doesn't fit beside; []
    for neither.
    """
    inner = width - 2 * margin(width)
    for words, beside in ((shown.place, ""), (f"{shown.part}, {shown.row}", shown.passes)):
        lines = letters.wrap(words, inner)
        if lines and len(lines) == 1:
            drawn = [_band([(row, "place", True)], width) for row in letters.draw(lines[0])]
            return [*drawn, *([_band([(beside, "place", True)], width)] if beside else [])]
    return []


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
    short = f"{shown.done} of {shown.total}" if shown.total is not None else str(shown.done)
    fitting = [words for words in (shown.count, short) if letters.width(words) <= width]
    if not fitting:
        return []
    drawn = [row for row in letters.draw(fitting[0]) if row.strip()]
    return [(Run(lead + row, "count", True),) for row in drawn]


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
        lines = broken(text, width - 2 * side)
        rows += lead + [_message(line, role, width) for line in lines]
    if len(rows) <= room:
        return rows
    return [*rows[: room - 1], _shortened(rows[room - 1], width)] if room > 0 else []


def large_messages(shown: Shown, width: int, room: int) -> list[Row]:
    """The most urgent message in large letters and the others plain; [] where that takes more than
    `room` rows.
    """
    first, *others = [*_messages(shown)] or [("", "")]
    side = margin(width)
    lines = letters.wrap(one_line(first[0]), width - 2 * side)
    if not lines:
        return []
    drawn = [row for line in lines for row in letters.draw(line)]
    rows = [_message(row, first[1], width) for row in drawn]
    for text, role in others:
        rows += [_message(line, role, width) for line in broken(text, width - 2 * side)]
    return rows if len(rows) <= room else []


def _messages(shown: Shown) -> Iterable[tuple[str, str]]:
    if shown.question:
        yield shown.question, "trouble"
    elif shown.answer:
        yield shown.answer, "page"
    for text in shown.trouble:
        yield f"Look out: {text}", "notice"
    for text in shown.notices:
        yield text, "notice"


def _message(words: str, role: str, width: int) -> Row:
    """A row of a message, on its own ground up to both edges."""
    left = " " * margin(width) + words
    return (Run(left + " " * max(0, width - cell_len(left)), role, True),)


def _shortened(row: Row, width: int) -> Row:
    """A row that ends in three dots, since more would follow."""
    text = "".join(run.text for run in row).rstrip()
    room = max(0, width - margin(width) - 3)
    return (Run(text[:room].rstrip(" .,;:") + "..."[: max(0, width)], row[0].role, row[0].strong),)


def _state(shown: Shown, width: int) -> Row:
    inner = width - 2 * margin(width)
    state = f"{_MARKS[shown.ear]} {shown.ear.value}"
    row: list[Run] = [Run(" " * margin(width) + cut(state, inner), "state", True)]
    left = inner - cell_len(state) - 2
    if shown.heard and left >= 8:
        heard = f"Heard: {shown.heard}"
        row.append(
            Run("  " + cut(heard if cell_len(heard) <= left else shown.heard, left), "quiet")
        )
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
