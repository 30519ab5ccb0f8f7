"""Script: what the scripted maker says and does, read from a plain text file.

One line an act, in order:

    maker: next                 spoken by the maker's voice; must be understood as exactly this
    aside: is the kettle on     spoken in the room, not to the program; nothing may come of it
    over: next                  spoken while the program is still talking
    key: n                      a key pressed
    says: twelve stitches       the program's last words must hold these
    at: Tower, Round 4          the place must hold these words
    wait: 2.5                   seconds of silence
    leave:                      the program is stopped as a power cut would, then started again
    # anything                  a remark
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from pathlib import Path

from reader.devices.ports import ReaderError


class Act(Enum):
    """What one line of a script does."""

    MAKER = "maker"
    OVER = "over"
    ASIDE = "aside"
    KEY = "key"
    SAYS = "says"
    AT = "at"
    WAIT = "wait"
    LEAVE = "leave"


@dataclass(frozen=True, slots=True)
class Line:
    """One act: the words that belong to it and the 1-based line of the script it stands on."""

    act: Act
    words: str
    number: int


class ScriptUnclear(ReaderError):
    """A script line that cannot be followed; the text says which and what would do."""


def read_script(file: Path) -> tuple[Line, ...]:
    """The acts of a script's file; raises ScriptUnclear where it is missing or cannot be read."""
    try:
        text = file.read_text(encoding="utf-8")
    except (OSError, UnicodeDecodeError) as trouble:
        raise ScriptUnclear(
            f"The script {file} cannot be read; check its name and the folder you are in."
        ) from trouble
    return parse_script(text)


def parse_script(text: str) -> tuple[Line, ...]:
    """The acts of a script, in order; raises ScriptUnclear at the first line that is none."""
    lines = enumerate(text.splitlines(), start=1)
    return tuple(_read(raw.strip(), number) for number, raw in lines if _is_act(raw.strip()))


def _is_act(raw: str) -> bool:
    return bool(raw) and not raw.startswith("#")


def _read(raw: str, number: int) -> Line:
    word, colon, rest = raw.partition(":")
    try:
        act = Act(word.strip().lower())
    except ValueError:
        act = None
    if act is None or not colon:
        known = ", ".join(a.value for a in Act)
        raise ScriptUnclear(
            f"Line {number} of the script, {raw!r}, begins with none of: {known}; "
            "each ends in a colon."
        )
    words = rest.strip()
    if act is Act.WAIT and not _is_seconds(words):
        raise ScriptUnclear(f"Line {number} of the script: after wait stands a number of seconds.")
    if act not in (Act.LEAVE, Act.WAIT) and not words:
        raise ScriptUnclear(f"Line {number} of the script: nothing stands after {act.value}.")
    return Line(act, words, number)


def _is_seconds(words: str) -> bool:
    try:
        return float(words) >= 0
    except ValueError:
        return False
