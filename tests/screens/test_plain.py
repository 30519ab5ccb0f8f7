"""Plain lines: append-only, one fact a line, nothing said twice, whatever stands at either end."""

from __future__ import annotations

import io
import os
import pty
import threading
from dataclasses import replace

import pytest
from hypothesis import given, settings

from reader.screens.choose import needs_plain
from reader.screens.plain import PlainScreen, writable
from reader.wording.shown import Ear, Shown
from tests.screens.moments import ANY, TOWER

HELP_LINES = ('the next step: say "next" or press space.',)


class Typing:
    """A pipe somebody types into, and what the screen made of it."""

    def __init__(self, typed: str = "", finish: bool = True) -> None:
        read, self.write_end = os.pipe()
        self.source = os.fdopen(read, encoding="utf-8")
        self.out = io.StringIO()
        self.keys: list[str] = []
        self.words: list[str] = []
        self.screen = PlainScreen(self.source, self.out, HELP_LINES)
        os.write(self.write_end, typed.encode())
        if finish:
            os.close(self.write_end)

    def run(self) -> None:
        """Runs until the end of what was typed."""
        self.screen.run(self._key, self.words.append)
        self.source.close()

    def _key(self, key: str) -> None:
        self.keys.append(key)
        if key == "ctrl+d":
            self.screen.close()


def printed(*moments: Shown) -> list[str]:
    """The lines that these moments print, one after the other."""
    typing = Typing()
    for moment in moments:
        typing.screen.show(moment)
    typing.run()
    return typing.out.getvalue().splitlines()


def test_a_moment_as_lines() -> None:
    """Everything about the first moment, each line beginning with what it tells."""
    assert printed(TOWER) == [
        "Pattern: Harbour Lighthouse Doorstop.",
        "Listening.",
        "Heard: next.",
        "Place: Tower, Round 4, pass 2 of 3.",
        "Soon: After round 4, change to red.",
        "Step: Single crochet in each of the next eight stitches.",
        "Count: 9 of 27 done, 18 left.",
    ]


def test_only_what_is_new_is_printed() -> None:
    """A following moment prints its news and nothing that was printed before."""
    after = replace(TOWER, step="Single crochet two together", done=17, ear=Ear.PAUSED)
    assert printed(TOWER, after)[7:] == [
        "Paused.",
        "Step: Single crochet two together.",
        "Count: 17 of 27 done, 10 left.",
    ]
    assert printed(TOWER, TOWER)[7:] == []


def test_the_same_step_in_the_next_pass_is_news() -> None:
    """A repeat worked again is read again."""
    after = replace(TOWER, passes="pass 3 of 3", done=18)
    typing = Typing()
    typing.screen.show(TOWER)
    typing.screen.heard_line("next")
    typing.screen.show(after)
    typing.run()
    assert typing.out.getvalue().splitlines()[7:] == [
        "Heard: next",
        "Place: Tower, Round 4, pass 3 of 3.",
        "Step: Single crochet in each of the next eight stitches.",
        "Count: 18 of 27 done, 9 left.",
    ]


def test_what_the_voice_says_is_not_printed_twice() -> None:
    """The step that was just spoken as a line is left out of the facts, and the other way round."""
    typing = Typing()
    typing.screen.say_line("Round 4. Single crochet in each of the next eight stitches.")
    typing.screen.show(TOWER)
    typing.screen.say_line("Single crochet in each of the next eight stitches")
    typing.run()
    said = typing.out.getvalue().lower()
    assert said.count("next eight stitches") == 1


def test_keys_and_words_come_through_in_order() -> None:
    """Single letters and names are keys, longer lines are words, the end is control-D."""
    typing = Typing("n\n\nspace\ngo to row five\nb")
    typing.run()
    assert typing.keys == ["n", "enter", "space", "b", "ctrl+d"]
    assert typing.words == ["go to row five"]


def test_close_from_another_thread_ends_a_waiting_screen() -> None:
    """A screen that waits for typing ends at once when it is closed, even twice."""
    typing = Typing(finish=False)
    threading.Timer(0.05, typing.screen.close).start()
    typing.run()
    typing.screen.close()
    os.close(typing.write_end)


def test_close_before_run_is_no_error() -> None:
    """A program that ends before its screen stands leaves no screen waiting."""
    typing = Typing(finish=False)
    typing.screen.close()
    typing.run()
    os.close(typing.write_end)


def test_a_reader_that_goes_away_ends_the_work_quietly() -> None:
    """With nobody reading the lines any more the end is told once, and no error comes."""
    typing = Typing(finish=False)

    class Gone(io.StringIO):
        def write(self, text: str) -> int:
            raise BrokenPipeError

    typing.screen = PlainScreen(typing.source, Gone())
    typing.screen.show(TOWER)
    typing.screen.show(replace(TOWER, done=10))
    typing.run()
    os.close(typing.write_end)
    assert typing.keys == ["ctrl+d"]


@settings(max_examples=60, deadline=None)
@given(ANY, ANY)
def test_any_two_moments_are_lines_without_control_letters(one: Shown, two: Shown) -> None:
    """No colour, no cursor movement, no empty line, whatever a pattern holds."""
    for line in printed(one, two):
        assert line.strip()
        assert "\x1b" not in line


@pytest.mark.parametrize(
    ("line", "encoding", "written"),
    [
        ("½ inch", "utf-8", "½ inch"),
        ("½ inch", "ascii", "1/2 inch"),
        ("purlé", "ascii", "purle"),
        ("針", "ascii", "\\u91dd"),
        ("½", None, "½"),
    ],
)
def test_old_terminals_get_plain_letters(line: str, encoding: str | None, written: str) -> None:
    """Nothing is lost where the terminal knows only plain letters."""
    assert writable(line, encoding) == written


def test_single_keys_from_a_terminal(monkeypatch: pytest.MonkeyPatch) -> None:
    """On a real terminal one key is enough, without enter, and the terminal is left as it was."""
    import termios

    monkeypatch.setenv("TERM", "xterm")
    ours, theirs = pty.openpty()
    keys: list[str] = []
    with os.fdopen(theirs, "r") as source:
        before = termios.tcgetattr(theirs)
        screen = PlainScreen(source, io.StringIO())
        os.write(ours, b"n \x1b[B")

        def on_key(key: str) -> None:
            keys.append(key)
            if len(keys) == 3:
                screen.close()

        screen.run(on_key)
        assert termios.tcgetattr(theirs) == before
    os.close(ours)
    assert keys == ["n", "space", "down"]


def test_plain_is_chosen_where_a_screen_cannot_be_drawn() -> None:
    """Pipes and terminals without a cursor get lines."""
    ours, theirs = pty.openpty()
    with os.fdopen(theirs, "r") as terminal:
        assert not needs_plain(terminal, terminal, "xterm-256color")
        assert needs_plain(terminal, terminal, "dumb")
        assert needs_plain(terminal, terminal, "")
        assert needs_plain(terminal, io.StringIO(), "xterm")
        assert needs_plain(io.StringIO(), terminal, "xterm")
    os.close(ours)


def test_plain_is_chosen_where_block_letters_cannot_be_written() -> None:
    """A terminal of an old character set gets lines instead of an error."""
    ours, theirs = pty.openpty()
    with (
        os.fdopen(theirs, "r") as source,
        os.fdopen(os.dup(theirs), "w", encoding="latin-1") as old,
        os.fdopen(os.dup(theirs), "w", encoding="utf-8") as new,
    ):
        assert needs_plain(source, old, "xterm")
        assert not needs_plain(source, new, "xterm")
    os.close(ours)


def test_the_list_of_words_and_keys_is_there_where_lines_are_typed() -> None:
    """f1, help or keys print a line for each request; none of them reaches the session."""
    for asked in ("f1", "help", "Keys"):
        typing = Typing(f"{asked}\nkey 3\n")
        typing.run()
        told = typing.out.getvalue().splitlines()
        assert told[0] == HELP_LINES[0]
        assert "key 3 presses the key 3" in told[1]
        assert (typing.keys, typing.words) == (["3", "ctrl+d"], [])
