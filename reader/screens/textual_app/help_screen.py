"""HelpScreen: everything that can be said or pressed, one a line, with a way back on any key."""

from __future__ import annotations

from rich.text import Text
from textual.app import ComposeResult
from textual.containers import VerticalScroll
from textual.events import Key
from textual.screen import Screen
from textual.widgets import Static

_SCROLLS = {"up", "down", "pageup", "pagedown", "home", "end"}


class HelpScreen(Screen[None]):
    """Lines of help; the arrow keys move through them, any other key goes back to the work."""

    AUTO_FOCUS = ""

    def __init__(self, lines: tuple[str, ...]) -> None:
        super().__init__()
        self._lines = lines

    def compose(self) -> ComposeResult:
        """The lines, and how to leave."""
        with VerticalScroll(can_focus=False):
            yield Static(Text("\n".join(self._lines)))
        yield Static("Up and down to read. Any other key: back to work.", classes="foot")

    def on_key(self, event: Key) -> None:
        """Scrolls or leaves."""
        event.stop()
        event.prevent_default()
        page = self.query_one(VerticalScroll)
        if event.key not in _SCROLLS:
            self.dismiss()
            return
        scroll = {
            "up": page.scroll_up,
            "down": page.scroll_down,
            "pageup": page.scroll_page_up,
            "pagedown": page.scroll_page_down,
            "home": page.scroll_home,
            "end": page.scroll_end,
        }[event.key]
        scroll(animate=False)
