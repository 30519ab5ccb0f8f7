"""A nought that was set as the letter, "K O", "K-O": put as the figure, length kept."""

from __future__ import annotations

from reader.text.sought import Sought

NOUGHT = Sought(
    ("k o", "k-o", "p o", "p-o"), r"(?<![\w.])(?P<verb>[KP])[ -]O(?=\s*[,;.()\]]|\s+[KP(]|$)"
)


def noughts(text: str) -> str:
    """The text with them in figures; any text goes in."""
    return NOUGHT.sub(lambda found: f"{found['verb']} 0", text)
