"""Typed bytes become the keys and words that were meant."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from reader.screens.textual_app.key_names import key_name
from reader.screens.typed import Words, from_keys, from_line


@pytest.mark.parametrize(
    ("line", "meant"),
    [
        ("n\n", "n"),
        ("\n", "enter"),
        (" \n", "space"),
        ("?\r\n", "?"),
        ("space\n", "space"),
        ("F1\n", "f1"),
        ("5\n", Words("5")),
        ("Next\n", Words("next")),
        ("  go to   Row five \n", Words("go to row five")),
    ],
)
def test_a_line_is_a_key_or_words(line: str, meant: str | Words) -> None:
    """One letter or the name of a key is the key; a number and anything else is words."""
    assert from_line(line) == meant


@pytest.mark.parametrize(
    ("sent", "keys"),
    [
        ("n", ["n"]),
        ("nN?5", ["n", "N", "?", "5"]),
        (" \r\t\x7f", ["space", "enter", "tab", "backspace"]),
        # ECMA-48, cursor keys and editing keys as xterm's control sequences document lists them.
        ("\x1b[A\x1b[B\x1b[C\x1b[D", ["up", "down", "right", "left"]),
        ("\x1b[5~\x1b[6~\x1bOP\x1b[24~", ["pageup", "pagedown", "f1", "f12"]),
        ("\x1b", ["escape"]),
        ("\x1bn", ["escape", "n"]),
        ("\x04\x0e", ["ctrl+d", "ctrl+n"]),
        ("\x1b[99~n", ["n"]),
        ("é\x00½", ["é", "½"]),
    ],
)
def test_bytes_of_a_terminal_are_keys(sent: str, keys: list[str]) -> None:
    """Letters, control keys and the sequences of keys without a letter."""
    assert from_keys(sent) == keys


@given(st.text())
def test_anything_typed_is_taken(text: str) -> None:
    """No input is an error, and no key is empty."""
    assert all(from_keys(text))
    from_line(text)


@pytest.mark.parametrize(
    ("key", "character", "name"),
    [
        ("n", "n", "n"),
        ("upper_n", "N", "N"),
        ("question_mark", "?", "?"),
        ("space", " ", "space"),
        ("f5", None, "f5"),
        ("ctrl+n", "\x0e", "ctrl+n"),
        ("shift+f5", None, None),
        ("pagedown", None, "pagedown"),
    ],
)
def test_keys_of_the_full_screen_have_the_same_names(
    key: str, character: str | None, name: str | None
) -> None:
    """Both screens name a key alike, so that one table of keys serves both."""
    assert key_name(key, character) == name
