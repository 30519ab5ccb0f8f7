"""FullScreen: keeps ScreenPort with the Textual application; called from the loop's thread, drawn
in the main one.
"""

from __future__ import annotations

import threading
from dataclasses import replace

from reader.screens.port import OnKey, OnWords
from reader.screens.textual_app.app import WorkingApp
from reader.wording.shown import Shown

_NOTHING = Shown(title="", part="", row="", step="One moment.")


class FullScreen:
    """The newest state, and the application that draws it."""

    def __init__(self, look: str = "dark", help_lines: tuple[str, ...] = ()) -> None:
        self._look, self._help_lines = look, help_lines
        self._lock = threading.Lock()
        self._shown, self._said, self._heard = _NOTHING, "", ""
        self._app: WorkingApp | None = None
        self._closed = False

    def show(self, shown: Shown) -> None:
        """Shows this."""
        with self._lock:
            if (shown.step, shown.place) != (self._shown.step, self._shown.place):
                self._said = ""
            self._shown = shown
        self._tell()

    def say_line(self, text: str) -> None:
        """Shows what is said, unless it is the step that is shown anyway."""
        with self._lock:
            self._said = text
        self._tell()

    def heard_line(self, text: str) -> None:
        """Shows what was heard."""
        with self._lock:
            self._heard = text
        self._tell()

    def run(self, on_key: OnKey, on_words: OnWords | None = None) -> None:
        """Draws until `close`."""
        app = WorkingApp(self._latest, lambda: self._help_lines, on_key, on_words, self._look)
        with self._lock:
            if self._closed:
                return
            self._app = app
        # Without the mouse the terminal's own marking and copying go on working.
        app.run(mouse=False)
        with self._lock:
            self._app = None
        if app.return_code == 130:
            raise KeyboardInterrupt

    def close(self) -> None:
        """Ends `run`."""
        with self._lock:
            self._closed = True
            app = self._app
        if app is not None:
            app.post_message(WorkingApp.Leave())

    def _latest(self) -> Shown:
        with self._lock:
            return replace(self._shown, answer=self._said, heard=self._heard or self._shown.heard)

    def _tell(self) -> None:
        with self._lock:
            app = self._app
        if app is not None:
            app.post_message(WorkingApp.Fresh())
