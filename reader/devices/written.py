"""Writing: in which pieces of text the proof's network writes a word, from the model directory."""

from __future__ import annotations

import lzma
from functools import cache

from reader.devices.model_check import model_folder
from reader.listening.words_network import Pieces

FILE = "pieces.xz"


@cache
def pieces_by_word(chosen: str = "") -> dict[str, Pieces]:
    """Lines "word<tab>numbers" of the directory's table, "" for the one that ships; {} without one:
    words are then asked for by their phones alone."""
    try:
        text = lzma.decompress((model_folder(chosen) / FILE).read_bytes()).decode()
        rows = (line.split("\t") for line in text.splitlines())
        return {word: tuple(map(int, numbers.split())) for word, numbers in rows}
    except (OSError, lzma.LZMAError, ValueError):
        return {}
