"""Key names: Textual's name for a key in, the name the session knows out."""

from __future__ import annotations

_NAMED = {
    "space", "enter", "escape", "tab", "backspace", "delete", "insert",
    "up", "down", "left", "right", "home", "end", "pageup", "pagedown",
}  # fmt: skip


def key_name(key: str, character: str | None) -> str | None:
    """The key as `ScreenPort` names it, None for keys that have no name there ("shift+f5")."""
    if key in _NAMED or (key.startswith("f") and key[1:].isdigit()):
        return key
    if character is not None and len(character) == 1 and character.isprintable():
        return character
    if key.startswith("ctrl+") and len(key) == len("ctrl+") + 1:
        return key
    return None
