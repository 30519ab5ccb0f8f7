"""WordsBar: one line to type words into instead of speaking them."""

from __future__ import annotations

from dataclasses import dataclass

from textual.app import ComposeResult
from textual.containers import Horizontal
from textual.events import Key
from textual.message import Message
from textual.widgets import Input, Label


class WordsBar(Horizontal):
    """Opens at the bottom of the screen; enter gives the words, escape gives none."""

    @dataclass
    class Typed(Message):
        """Words were typed; "" means the maker changed their mind."""

        words: str

    def compose(self) -> ComposeResult:
        """A word of explanation and the line itself."""
        yield Label("Words: ")
        yield Input(compact=True)

    def on_input_submitted(self, event: Input.Submitted) -> None:
        """Enter was pressed."""
        event.stop()
        self.post_message(self.Typed(" ".join(event.value.lower().split())))

    def on_key(self, event: Key) -> None:
        """Escape leaves the line."""
        if event.key == "escape":
            event.stop()
            event.prevent_default()
            self.post_message(self.Typed(""))
