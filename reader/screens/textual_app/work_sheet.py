"""WorkSheet: the one widget of the working screen; draws what the layout gives in the colours of
the look.
"""

from __future__ import annotations

from rich.segment import Segment
from rich.style import Style
from textual.strip import Strip
from textual.widget import Widget

from reader.screens.layout import Sheet, lay_out
from reader.screens.palette import Look, Pair
from reader.screens.rows import Row
from reader.wording.shown import Shown


class WorkSheet(Widget):
    """Everything about the present step, filling the terminal."""

    can_focus = False

    def __init__(self, shown: Shown, look: Look) -> None:
        super().__init__()
        self._shown, self._look = shown, look
        self._page = 0
        self._sheet: Sheet | None = None

    def put(self, shown: Shown) -> None:
        """Shows this; a new step begins at its first page."""
        if shown.step != self._shown.step:
            self._page = 0
        self._shown = shown
        self._redraw()

    def put_look(self, look: Look) -> None:
        """Changes the colours."""
        self._look = look
        self._redraw()

    @property
    def pages(self) -> int:
        """Pages the present step takes at this size."""
        return self._laid().pages

    def turn_page(self, by: int) -> None:
        """Moves through a step that takes several pages; stops at both ends."""
        self._page = min(max(0, self._page + by), self.pages - 1)
        self._redraw()

    def on_resize(self) -> None:
        """A new size asks for a new layout."""
        self._redraw()

    def render_line(self, y: int) -> Strip:
        """Row y of the screen, painted from edge to edge."""
        rows = self._laid().rows
        page = _style(self._look.page, strong=False)
        if y >= len(rows):
            return Strip.blank(self.size.width, page)
        return Strip(_painted(rows[y], self._look)).adjust_cell_length(self.size.width, page)

    def _laid(self) -> Sheet:
        if self._sheet is None:
            self._sheet = lay_out(self._shown, self.size.width, self.size.height, self._page)
        return self._sheet

    def _redraw(self) -> None:
        self._sheet = None
        self.refresh()


def _painted(row: Row, look: Look) -> list[Segment]:
    pairs = look.pairs()
    return [Segment(run.text, _style(pairs[run.role], strong=run.strong)) for run in row]


def _style(pair: Pair, *, strong: bool) -> Style:
    return Style(color=pair.ink, bgcolor=pair.ground, bold=strong)
