"""Layout: what is shown and the size of the terminal in, the rows of the screen out. Pure; any size
from 1x1.
"""

from __future__ import annotations

from dataclasses import dataclass

from reader.screens import letters
from reader.screens.bands import count_ways, foot, head, large_messages, message_rows
from reader.screens.rows import Row, Run, broken, clipped, margin
from reader.wording.shown import Shown


@dataclass(frozen=True, slots=True)
class Sheet:
    """A whole screen: exactly as many rows as asked for, none wider. pages: how many the step
    takes, at least 1.
    """

    rows: tuple[Row, ...]
    pages: int


@dataclass(frozen=True, slots=True)
class _Way:
    """One way to draw the step: large text in dots of this scale, 0 for plain; brief words, or all
    of them.
    """

    scale: int
    brief: bool = False


_WAYS = (_Way(2), _Way(1), _Way(1, brief=True), _Way(0))
"""From the largest to the smallest; the first that fits is taken."""


def lay_out(shown: Shown, width: int, height: int, page: int = 0) -> Sheet:
    """The screen for a terminal of width x height; page counts from 0 where a long step takes
    several.
    """
    width, height = max(1, width), max(1, height)
    top, bottom = head(shown, width, height), foot(shown, width, height)
    free = max(1, height - len(top) - len(bottom))
    messages = message_rows(shown, width, free)
    # Room for two messages is kept where it can be, so that an answer does not make the step jump.
    kept = 2 if free >= 14 else 0
    room = max(1, free - max(kept, len(messages)))
    middle, pages = _middle(shown, width, room, page)
    air = min(height // 14, max(0, room - len(middle)))
    messages = large_messages(shown, width, free - air - len(middle) - 1) or messages
    spare = max(0, free - air - len(middle) - len(messages))
    rows = [*top, *_blank(air), *middle, *_blank(spare), *messages, *bottom]
    # On the smallest terminals the step is worth more than what stands around it.
    if height < 3:
        rows = middle
    rows = (rows + _blank(height))[:height]
    return Sheet(tuple(clipped(row, width) for row in rows), pages)


def _middle(shown: Shown, width: int, room: int, page: int) -> tuple[list[Row], int]:
    """Step and count, as large as the room allows."""
    counts = count_ways(shown, width)
    air = 1 if room >= 12 else 0
    for way in _WAYS:
        step = _large_step(shown, way, width)
        for count in counts if step is not None else ():
            gap = 1 if count and (room >= 6 or way.scale) else 0
            if len(step or ()) + gap + len(count) + air <= room:
                return [*(step or ()), *_blank(gap), *count], 1
    return _paged(shown, counts[-1], width, room, page)


def _large_step(shown: Shown, way: _Way, width: int) -> list[Row] | None:
    """The step drawn this way, None where it cannot be."""
    side = margin(width)
    plain = [_line(words, "step", side) for words in broken(shown.step, width - 2 * side)]
    if way.scale == 0:
        return plain
    words = shown.brief if way.brief else shown.step
    if not words or (way.brief and shown.brief == shown.step):
        return None
    lines = letters.wrap(words, width - 2 * side, way.scale)
    if not lines:
        return None
    drawn = [_line(row, "step", side) for line in lines for row in letters.draw(line, way.scale)]
    return [*drawn, *plain] if way.brief else drawn


def _paged(
    shown: Shown, count: list[Row], width: int, room: int, page: int
) -> tuple[list[Row], int]:
    """A step too long for the room, one page of it, and the count where a row is left."""
    side = margin(width)
    lines = broken(shown.step, width - 2 * side)
    count = count if room >= len(count) + 2 else []
    deep = max(1, room - len(count))
    if len(lines) <= deep:
        return [*(_line(words, "step", side) for words in lines), *count], 1
    deep = max(1, deep - 1)
    pages = -(-len(lines) // deep)
    page = min(max(0, page), pages - 1)
    piece = [_line(words, "step", side) for words in lines[page * deep : (page + 1) * deep]]
    turn = [_line(_turning(page + 1, pages, width - side), "notice", side)] if room > 1 else []
    return [*piece, *turn, *count][:room], pages


def _turning(page: int, pages: int, width: int) -> str:
    """How far the step has been read, as fully as the width allows."""
    ways = (
        f"Page {page} of {pages}: up or down",
        f"{page} of {pages}, up, down",
        f"{page}/{pages}",
    )
    return next((words for words in ways if len(words) <= width), "")


def _line(text: str, role: str, side: int) -> Row:
    return (Run(" " * side + text, role, strong=True),)


def _blank(rows: int) -> list[Row]:
    return [(Run("", "page"),)] * rows
