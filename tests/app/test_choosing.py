"""Before the work: the size is chosen by voice or keys, a piece on the go is offered."""

from __future__ import annotations

from pathlib import Path

import pytest

from reader.app.loop import KeyPressed, Loop, Typed
from reader.app.opening import Opening
from reader.devices.fakes import FakeClock, FakeEar, FakeVoice
from reader.devices.ports import PatternUnreadable
from reader.devices.progress_file import FileShelf
from reader.session.state import Tastes
from reader.wording.choices import shown_choice
from tests.session.play import DEMOS

PENNANT, LIGHTHOUSE = DEMOS / "mooring-pennant.txt", DEMOS / "harbour-lighthouse.txt"


class Table:
    """A program started on a maker's table, with scripted voice and ear and a real shelf."""

    def __init__(
        self, home: Path, file: Path | str = "", size: int | None = None, again: bool = False
    ) -> None:
        self.clock = FakeClock()
        shelf = FileShelf(home)
        self.loop = Loop(None, None, None, None, shelf, self.clock)
        self.loop.voice = self.voice = FakeVoice(self.clock, self.loop.push)
        self.loop.ear = self.ear = FakeEar(self.loop.push, self.clock)
        Opening(self.loop, shelf, Tastes(), size, again).ready(str(file))()
        self.settle()

    def settle(self) -> None:
        """Everything in the queue is done."""
        while not self.loop.events.empty():
            self.loop.one(self.loop.events.get())

    def says(self, words: str) -> str:
        """The maker says this; gives the program's last words."""
        assert words in self.ear.phrases, f"{words!r} cannot be heard now"
        self.ear.speak(words)
        self.settle()
        return self.voice.said[-1].text.lower()

    def presses(self, *names: str) -> str:
        """The maker presses these keys; gives the program's last words."""
        for name in names:
            self.loop.push(KeyPressed(name))
            self.settle()
        return self.voice.said[-1].text.lower()

    @property
    def last(self) -> str:
        """The program's last words."""
        return self.voice.said[-1].text.lower()


def test_the_size_is_asked_said_back_and_only_then_worked(tmp_path: Path) -> None:
    """No stitch is read before; no takes it back; yes begins with that size's numbers."""
    table = Table(tmp_path, PENNANT)
    assert "two sizes" in table.last
    assert "cast on" not in table.last
    assert "next" not in table.ear.phrases
    assert "is that right" in table.says("two")
    assert "which one" in table.says("no")
    table.says("the second")
    assert "cast on seven stitches" in table.says("yes")


def test_a_size_that_is_not_there_cannot_be_heard_and_is_refused_when_typed(
    tmp_path: Path,
) -> None:
    """Only the pattern's sizes are in the ear's grammar; a typed other one is told which are."""
    table = Table(tmp_path, PENNANT)
    assert "three" not in table.ear.phrases
    table.loop.push(Typed("nine"))
    table.settle()
    assert "not one of them" in table.last


def test_the_size_is_remembered_and_not_asked_again(tmp_path: Path) -> None:
    """Coming back, the piece goes on in its size."""
    first = Table(tmp_path, PENNANT)
    first.presses("2", "enter", "y", "space")
    second = Table(tmp_path, PENNANT)
    assert "welcome back" in second.last
    assert "seven stitches" in second.says("whole row")


def test_a_size_on_the_command_line_is_not_asked_for(tmp_path: Path) -> None:
    """`--size 1` begins at once."""
    assert "cast on five stitches" in Table(tmp_path, PENNANT, size=0).last


def test_without_a_file_the_pieces_on_the_go_are_offered(tmp_path: Path) -> None:
    """Two pieces: named, chosen, resumed where each was."""
    Table(tmp_path, LIGHTHOUSE).presses("space", "space")
    Table(tmp_path, PENNANT, size=1).presses("space")
    table = Table(tmp_path)
    assert "two pieces" in table.last
    assert "harbour lighthouse doorstop" in table.last
    table.says("harbour lighthouse doorstop")
    assert "round three" in table.says("yes")
    table = Table(tmp_path)
    table.presses("1", "enter")
    assert "welcome back" in table.presses("y")


def test_one_piece_on_the_go_is_opened_at_once(tmp_path: Path) -> None:
    """There is nothing to choose."""
    Table(tmp_path, LIGHTHOUSE).presses("space")
    assert "welcome back to harbour lighthouse" in Table(tmp_path).last


def test_a_finished_piece_is_not_offered(tmp_path: Path) -> None:
    """What is finished is no longer on the go."""
    table = Table(tmp_path, PENNANT, size=0)
    for _ in range(120):
        table.presses("space")
    assert "whole piece is done" in table.last
    with pytest.raises(PatternUnreadable, match="finished are Mooring Pennant on 2026-01-15"):
        Table(tmp_path)


def test_a_piece_whose_pattern_is_gone_is_not_offered(tmp_path: Path) -> None:
    """A moved file is no choice."""
    mine = tmp_path / "mine.txt"
    mine.write_text(LIGHTHOUSE.read_text(encoding="utf-8"), encoding="utf-8")
    Table(tmp_path, mine).presses("space")
    mine.unlink()
    with pytest.raises(PatternUnreadable):
        Table(tmp_path)


def test_three_unclear_names_tell_the_keys(tmp_path: Path) -> None:
    """The choice too says how keys do it, and then is quiet."""
    table = Table(tmp_path, PENNANT)
    for _ in range(5):
        table.ear.speak("two", certain=False)
        table.settle()
    said = [one.text for one in table.voice.said if "three times" in one.text]
    assert len(said) == 1
    assert "then enter" in said[0]


def test_a_choice_is_shown_with_its_numbers_then_the_one_named(tmp_path: Path) -> None:
    """The screen has what is to be read, and for yes or no the name alone."""
    table = Table(tmp_path, PENNANT)
    choosing = table.loop.choosing
    assert choosing is not None
    shown = shown_choice(choosing, "Which one?")
    for at, name in enumerate(choosing.names, start=1):
        assert f"{at}: {name}" in shown.step
    table.presses("2", "enter")
    choosing = table.loop.choosing
    assert choosing is not None
    shown = shown_choice(choosing, "Is that right?")
    assert shown.step == choosing.names[1]
    assert shown.question == "Is that right?"
