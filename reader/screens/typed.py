"""Typed: bytes from a terminal or a pipe in, key names and lines of words out. Pure."""

from __future__ import annotations

from dataclasses import dataclass

KEY_NAMES = {
    "space",
    "enter",
    "escape",
    "tab",
    "backspace",
    "delete",
    "insert",
    "up",
    "down",
    "left",
    "right",
    "home",
    "end",
    "pageup",
    "pagedown",
    *(f"f{n}" for n in range(1, 13)),
}

_SEQUENCES = {
    "[A": "up",
    "[B": "down",
    "[C": "right",
    "[D": "left",
    "[H": "home",
    "[F": "end",
    "OA": "up",
    "OB": "down",
    "OC": "right",
    "OD": "left",
    "OH": "home",
    "OF": "end",
    "[1~": "home",
    "[4~": "end",
    "[2~": "insert",
    "[3~": "delete",
    "[5~": "pageup",
    "[6~": "pagedown",
    "OP": "f1",
    "OQ": "f2",
    "OR": "f3",
    "OS": "f4",
    "[11~": "f1",
    "[12~": "f2",
    "[13~": "f3",
    "[14~": "f4",
    "[15~": "f5",
    "[17~": "f6",
    "[18~": "f7",
    "[19~": "f8",
    "[20~": "f9",
    "[21~": "f10",
    "[23~": "f11",
    "[24~": "f12",
}
"""What a terminal sends for keys without a letter (ECMA-48 sequences as xterm and the Linux console
send them).
"""

_SINGLE = {
    " ": "space",
    "\r": "enter",
    "\n": "enter",
    "\t": "tab",
    "\x1b": "escape",
    "\x7f": "backspace",
    "\x08": "backspace",
}


@dataclass(frozen=True, slots=True)
class Words:
    """Words typed as a line."""

    text: str


def from_line(line: str) -> str | Words:
    """A typed line: the key it names ("n", "space", "" for enter), or words; a number is words,
    since it is whole, and "key 3" is the key 3.
    """
    plain = line.rstrip("\r\n")
    if plain in ("", " "):
        return "enter" if plain == "" else "space"
    word = plain.strip()
    if len(word) == 1 and not word.isdigit():
        return word
    small = " ".join(word.lower().split())
    pressed = small.removeprefix("key ")
    if pressed != small and (len(pressed) == 1 or pressed in KEY_NAMES):
        return pressed
    return small if small in KEY_NAMES else Words(small)


def from_keys(text: str) -> list[str]:
    """The keys in what a terminal sent at once; sequences that are not known are left out."""
    keys: list[str] = []
    at = 0
    while at < len(text):
        name, taken = _key_at(text, at)
        keys += [name] if name else []
        at += taken
    return keys


def _key_at(text: str, at: int) -> tuple[str, int]:
    letter = text[at]
    if letter == "\x1b" and text[at + 1 : at + 2] in ("[", "O") and len(text) > at + 2:
        end = at + 2
        while end < len(text) and text[end] in "0123456789;":
            end += 1
        return _SEQUENCES.get(text[at + 1 : end + 1], ""), end + 1 - at
    if letter in _SINGLE:
        return _SINGLE[letter], 1
    if "\x01" <= letter <= "\x1a":
        return f"ctrl+{chr(ord(letter) + 96)}", 1
    return (letter if letter.isprintable() else ""), 1
