"""Pronunciations: how words sound, from the dictionary that ships with the listening model."""

from __future__ import annotations

import lzma
from collections.abc import Iterable
from functools import cache

from reader.devices.model_check import model_folder
from reader.listening.alike import Phones


def sounds_of(phrases: Iterable[str]) -> dict[str, Phones]:
    """The usual phones of each phrase all of whose words are in the dictionary; {} without one."""
    known = _dictionary()
    return {
        phrase: tuple(phone for word in phrase.split() for phone in known[word])
        for phrase in phrases
        if all(word in known for word in phrase.split())
    }


@cache
def ways_of(word: str) -> tuple[Phones, ...]:
    """Every way in which the dictionary has a word said, the usual one first; () for none."""
    text, ways, at = _text(), [], -1
    while (at := text.find(f"\n{word}\t", at + 1)) >= 0:
        start, end = at + len(word) + 2, text.find("\n", at + 1)
        ways.append(tuple(text[start : end if end >= 0 else None].split()))
    return tuple(dict.fromkeys(ways))


@cache
def _text() -> str:
    """The dictionary's lines, each behind a line break; "" without one."""
    try:
        text = lzma.decompress((model_folder() / "pronunciations.xz").read_bytes()).decode()
    except (OSError, lzma.LZMAError, UnicodeDecodeError):
        return ""
    return f"\n{text}"


@cache
def _dictionary() -> dict[str, Phones]:
    words: dict[str, Phones] = {}
    for line in _text().splitlines()[1:]:
        word, _, phones = line.partition("\t")
        words.setdefault(word, tuple(phones.split()))
    return words
