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
def _dictionary() -> dict[str, Phones]:
    try:
        text = lzma.decompress((model_folder() / "pronunciations.xz").read_bytes()).decode()
    except (OSError, lzma.LZMAError, UnicodeDecodeError):
        return {}
    words: dict[str, Phones] = {}
    for line in text.splitlines():
        word, _, phones = line.partition("\t")
        words.setdefault(word, tuple(phones.split()))
    return words
