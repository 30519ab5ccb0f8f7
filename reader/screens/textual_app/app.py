"""WorkingApp: the Textual application; keys go out by a callback, what is shown comes in by
messages.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from textual.app import App, ComposeResult
from textual.binding import Binding
from textual.events import Key
from textual.message import Message
from textual.widgets import Input

from reader.screens.palette import LOOKS, Look
from reader.screens.textual_app.help_screen import HelpScreen
from reader.screens.textual_app.key_names import key_name
from reader.screens.textual_app.words_bar import WordsBar
from reader.screens.textual_app.work_sheet import WorkSheet
from reader.wording.shown import Shown

HELP_KEY, LOOK_KEY, WORDS_KEY = "f1", "f2", "f3"
"""The screen's own keys; every other key goes to the session."""


class WorkingApp(App[None]):
    """The working screen. on_key and on_words are called in the main thread and must not block."""

    CSS_PATH = Path(__file__).with_name("app.tcss")
    ENABLE_COMMAND_PALETTE = False
    AUTO_FOCUS = ""
    BINDINGS = [  # noqa: RUF012 - Textual reads the plain list of the class
        Binding("ctrl+c", "session_key('ctrl+c')", priority=True, show=False),
        Binding("ctrl+q", "session_key('ctrl+c')", priority=True, show=False),
        Binding("ctrl+d", "session_key('ctrl+d')", priority=True, show=False),
    ]

    @dataclass
    class Fresh(Message):
        """Something new is to be shown."""

    @dataclass
    class Leave(Message):
        """The program is over."""

    def __init__(
        self,
        latest: Callable[[], Shown],
        help_lines: Callable[[], tuple[str, ...]],
        on_key: Callable[[str], None],
        on_words: Callable[[str], None] | None = None,
        look: str = "dark",
    ) -> None:
        self._look: Look = LOOKS[look]
        super().__init__()
        self._latest, self._help_lines = latest, help_lines
        self._give_key, self._give_words = on_key, on_words
        self._asked_to_end = False

    def get_css_variables(self) -> dict[str, str]:
        """The palette's pairs as $name-ink and $name-ground."""
        variables = super().get_css_variables()
        for name, pair in self._look.pairs().items():
            variables |= {f"{name}-ink": pair.ink, f"{name}-ground": pair.ground}
        return variables

    def compose(self) -> ComposeResult:
        """The sheet and the line for typing."""
        yield WorkSheet(self._latest(), self._look)
        yield WordsBar()

    def on_mount(self) -> None:
        """Whatever was shown before the screen stood is drawn now."""
        self._put_latest()

    def on_working_app_fresh(self) -> None:
        """Draws the newest state; several in a row are drawn once."""
        self._put_latest()

    def on_working_app_leave(self) -> None:
        """Ends the application."""
        self.exit()

    def on_key(self, event: Key) -> None:
        """The screen's own keys here, every other key to the session."""
        if isinstance(self.focused, Input):
            return
        name = key_name(event.key, event.character)
        if name is None:
            return
        event.stop()
        event.prevent_default()
        if name == HELP_KEY:
            self.push_screen(HelpScreen(self._help_lines()))
        elif name == LOOK_KEY:
            self._change_look()
        elif name in (WORDS_KEY, ":") and self._give_words is not None:
            self._open_words(True)
        elif name in ("up", "down") and self._sheet.pages > 1:
            self._sheet.turn_page(1 if name == "down" else -1)
        else:
            self._give_key(name)

    def on_words_bar_typed(self, event: WordsBar.Typed) -> None:
        """Words typed instead of spoken."""
        self._open_words(False)
        if event.words and self._give_words is not None:
            self._give_words(event.words)

    def action_session_key(self, name: str) -> None:
        """Gives a key that works everywhere; pressed again with no answer it ends the program at
        once.
        """
        if self._asked_to_end:
            self.exit(return_code=130)
            return
        self._asked_to_end = True
        self._give_key(name)

    @property
    def _sheet(self) -> WorkSheet:
        return self.screen_stack[0].query_one(WorkSheet)

    def _put_latest(self) -> None:
        self._asked_to_end = False
        self._sheet.put(self._latest())

    def _change_look(self) -> None:
        names = list(LOOKS)
        self._look = LOOKS[names[(names.index(self._look.name) + 1) % len(names)]]
        self.refresh_css(animate=False)
        self._sheet.put_look(self._look)

    def _open_words(self, is_open: bool) -> None:
        bar = self.query_one(WordsBar)
        bar.set_class(is_open, "open")
        line = bar.query_one(Input)
        line.value = ""
        if is_open:
            line.focus()
        else:
            self.set_focus(None)
