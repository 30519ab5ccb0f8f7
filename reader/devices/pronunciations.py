"""Pronunciations: how words sound, from the dictionary that ships with the listening model; for
words that it lacks, by the words or the letters they are made of.
"""

from __future__ import annotations

import lzma
from collections.abc import Iterable
from functools import cache
from itertools import islice

from reader.devices.model_check import model_folder
from reader.listening.alike import Phones
from reader.listening.letters import MOST_WAYS, by_letters

LEAST_HALF = 3
"""Letters of each half of a compound."""
MOST_JOINED = 3
"""Ways of parting a word in two that are tried."""


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
    """Every way in which a word may be said, the usual one first: as the dictionary has it, else as
    two words joined that it has, and by its letters; () for what is no word.
    """
    made = dict.fromkeys((*_joined(word), *by_letters(word)))
    return _held(word) or tuple(made)[:MOST_WAYS]


def _joined(word: str) -> tuple[Phones, ...]:
    """A compound by its two halves, "porthole"; the more even ones first, () for none."""
    places = range(LEAST_HALF, len(word) - LEAST_HALF + 1)
    even = sorted(places, key=lambda at: abs(len(word) - 2 * at))
    halves = ((word[:at], word[at:]) for at in even)
    ways = (a + b for first, second in halves for a in _held(first)[:1] for b in _held(second)[:1])
    return tuple(islice(ways, MOST_JOINED))


@cache
def _held(word: str) -> tuple[Phones, ...]:
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
