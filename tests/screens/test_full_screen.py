"""The full screen takes every key, draws from any thread, and fits every terminal."""

from __future__ import annotations

import asyncio
import threading
from collections.abc import Awaitable, Callable
from dataclasses import replace

import pytest
from textual.pilot import Pilot
from textual.widgets import Input, Static

from reader.screens.palette import DARK, LIGHT
from reader.screens.textual_app.app import HELP_KEY, LOOK_KEY, WORDS_KEY, WorkingApp
from reader.screens.textual_app.full_screen import FullScreen
from reader.screens.textual_app.help_screen import HelpScreen
from reader.screens.textual_app.words_bar import WordsBar
from reader.screens.textual_app.work_sheet import WorkSheet
from reader.screens.typed import KEY_NAMES
from reader.wording.shown import Shown
from tests.screens.moments import TOWER

SIZES = [(1, 1), (5, 2), (20, 6), (40, 12), (80, 24), (120, 40), (200, 60)]


class Desk:
    """An application in a terminal of our making, and what came out of it."""

    def __init__(self, shown: Shown = TOWER, look: str = "dark") -> None:
        self.shown = shown
        self.keys: list[str] = []
        self.words: list[str] = []
        help_lines = ("Go on: say next or press space.", "Go back: say back or press b.")
        self.app = WorkingApp(
            lambda: self.shown, lambda: help_lines, self.keys.append, self.words.append, look
        )

    def run(
        self, work: Callable[[Pilot[None]], Awaitable[None]], size: tuple[int, int] = (80, 24)
    ) -> None:
        """Does the work in a terminal of this size."""

        async def inside() -> None:
            async with self.app.run_test(size=size) as pilot:
                await pilot.pause()
                await work(pilot)

        asyncio.run(inside())

    def text(self) -> str:
        """What the terminal shows."""
        sheet = self.app.screen.query_one(WorkSheet)
        return "\n".join(sheet.render_line(y).text for y in range(sheet.size.height))


@pytest.mark.parametrize("size", SIZES)
def test_every_size_is_drawn_from_edge_to_edge(size: tuple[int, int]) -> None:
    """No error and no ragged row from one letter to a wall of them."""
    desk = Desk()

    async def work(pilot: Pilot[None]) -> None:
        rows = desk.text().split("\n")
        assert len(rows) == size[1]
        assert {len(row) for row in rows} == {size[0]}

    desk.run(work, size)


def test_resizing_lays_out_anew() -> None:
    """A terminal made smaller while working still shows all that matters."""
    desk = Desk()

    async def work(pilot: Pilot[None]) -> None:
        await pilot.resize_terminal(20, 6)
        await pilot.pause()
        assert "Round 4" in desk.text()
        assert "9 of 27" in desk.text()

    desk.run(work)


def test_keys_go_to_the_session() -> None:
    """Letters, space, arrows and control-C arrive under the names the port promises."""
    desk = Desk()

    async def work(pilot: Pilot[None]) -> None:
        await pilot.press("n", "space", "question_mark", "N", "5", "up", "pagedown", "ctrl+n")
        assert desk.keys == ["n", "space", "?", "N", "5", "up", "pagedown", "ctrl+n"]
        await pilot.press("ctrl+c")
        assert desk.keys[-1] == "ctrl+c"

    desk.run(work)


def test_every_named_key_reaches_the_session() -> None:
    """Tab, escape and the others a widget set likes to keep: pedals may send any of them."""
    desk = Desk()
    keys = sorted(KEY_NAMES - {HELP_KEY, LOOK_KEY, WORDS_KEY})

    async def work(pilot: Pilot[None]) -> None:
        await pilot.press(*keys)

    desk.run(work, (40, 12))
    assert desk.keys == keys


def test_control_c_twice_ends_even_a_program_that_hangs() -> None:
    """Nobody is locked in: the first press asks, the second ends."""
    desk = Desk()

    async def work(pilot: Pilot[None]) -> None:
        await pilot.press("ctrl+c", "ctrl+c")
        await pilot.pause()

    desk.run(work)
    assert desk.app.return_code == 130
    assert desk.keys == ["ctrl+c"]


def test_help_opens_scrolls_and_closes() -> None:
    """F1 shows what can be said; arrows read on; any other key goes back and does nothing else."""
    desk = Desk()

    async def work(pilot: Pilot[None]) -> None:
        await pilot.press("f1")
        await pilot.pause()
        assert isinstance(desk.app.screen, HelpScreen)
        shown = " ".join(str(part.content) for part in desk.app.screen.query(Static))
        assert "say next or press space" in shown
        await pilot.press("down", "up", "end", "home")
        assert isinstance(desk.app.screen, HelpScreen)
        await pilot.press("n")
        await pilot.pause()
        assert not isinstance(desk.app.screen, HelpScreen)
        assert desk.keys == []

    desk.run(work, (40, 12))


def test_the_look_changes_on_a_key() -> None:
    """F2 goes from dark to light and back, at once."""
    desk = Desk()

    async def work(pilot: Pilot[None]) -> None:
        grounds = []
        for _ in range(3):
            segments = list(desk.app.screen.query_one(WorkSheet).render_line(1))
            grounds.append(segments[0].style.bgcolor.name)  # type: ignore[union-attr]
            await pilot.press("f2")
            await pilot.pause()
        assert grounds == [DARK.page.ground, LIGHT.page.ground, DARK.page.ground]

    desk.run(work)


def test_words_can_be_typed_instead_of_spoken() -> None:
    """F3 opens a line; its words go to the session in small letters; escape gives none."""
    desk = Desk()

    async def work(pilot: Pilot[None]) -> None:
        await pilot.press("f3", *"Go to", "space", "space", *"row", "enter")
        await pilot.press("colon", "n", "escape")
        await pilot.pause()
        assert not desk.app.query_one(WordsBar).has_class("open")
        assert not isinstance(desk.app.focused, Input)
        await pilot.press("n")

    desk.run(work)
    assert desk.words == ["go to row"]
    assert desk.keys == ["n"]


def test_a_long_step_is_read_page_by_page() -> None:
    """Where a step needs several pages the arrows turn them; where it doesn't, they go to the
    session.
    """
    desk = Desk(replace(TOWER, step=" ".join(f"word{n}" for n in range(200)), brief=""))

    async def work(pilot: Pilot[None]) -> None:
        assert "word0 " in desk.text()
        await pilot.press("down")
        await pilot.pause()
        assert "word0 " not in desk.text()
        await pilot.press("up", "up")
        await pilot.pause()
        assert "word0 " in desk.text()

    desk.run(work, (40, 12))
    assert desk.keys == []


def test_without_colour_the_same_words_stand(monkeypatch: pytest.MonkeyPatch) -> None:
    """With NO_COLOR (no-color.org) nothing is lost, since nothing is told by colour."""
    monkeypatch.setenv("NO_COLOR", "1")
    desk = Desk()

    async def work(pilot: Pilot[None]) -> None:
        assert desk.app.no_color
        for words in ("Round 4", "pass 2 of 3", "9 of 27 done, 18 left", "Listening"):
            assert words in desk.text()

    desk.run(work)


def headless(monkeypatch: pytest.MonkeyPatch) -> None:
    """Lets the application run without a terminal."""
    run = WorkingApp.run

    def run_headless(app: WorkingApp, mouse: bool) -> None:
        run(app, headless=True, size=(80, 24), mouse=mouse)

    monkeypatch.setattr(WorkingApp, "run", run_headless)


def test_the_loop_may_show_from_its_own_thread(monkeypatch: pytest.MonkeyPatch) -> None:
    """Five hundred states and lines from another thread are drawn without an error or a wait, the
    last one last.
    """
    headless(monkeypatch)
    screen = FullScreen()
    screen.show(TOWER)
    seen: list[str] = []

    def loop() -> None:
        for done in range(500):
            screen.show(replace(TOWER, done=done % 28))
            screen.say_line(f"{done} said")
            screen.heard_line("next")
        seen.append(screen._latest().answer)
        screen.close()

    threading.Timer(0.2, loop).start()
    screen.run(lambda key: None)
    assert seen == ["499 said"]


def test_closing_before_and_after_is_no_error(monkeypatch: pytest.MonkeyPatch) -> None:
    """A screen closed before it stood never stands; closing again does nothing."""
    headless(monkeypatch)
    screen = FullScreen()
    screen.close()
    screen.run(lambda key: None)
    screen.close()
    screen.show(TOWER)


def test_an_answer_stands_until_the_work_moves_on() -> None:
    """What was said last is shown; a new step puts it away."""
    screen = FullScreen()
    screen.show(TOWER)
    screen.say_line("You have nine of twenty-seven.")
    assert screen._latest().answer == "You have nine of twenty-seven."
    screen.show(replace(TOWER, step="Single crochet two together"))
    assert screen._latest().answer == ""
