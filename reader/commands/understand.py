"""Heard + the phrases that make sense now -> a command, unclear, or not for us."""

from __future__ import annotations

from dataclasses import dataclass

from reader.commands.command import Ask, Command
from reader.commands.numbers import read_number
from reader.commands.phrases import ask_of
from reader.listening.heard import Heard


@dataclass(frozen=True, slots=True)
class Unsure:
    """Something was said that may have been for us; words: the likeliest reading."""

    words: str


@dataclass(frozen=True, slots=True)
class NotForUs:
    """Speech in the room, or nothing."""


def understand(heard: Heard, expected: tuple[str, ...]) -> Command | Unsure | NotForUs:
    """The command for an utterance; only a phrase that is expected now can be one."""
    words = heard.text.strip()
    if not words or words not in expected:
        return NotForUs()
    return command_of(words) if heard.certain else Unsure(words)


def command_of(words: str) -> Command:
    """The command of a phrase: a request, a number, or a word of the maker's own."""
    ask = ask_of(words)
    if ask is not None:
        return Command(ask, word=words)
    number = read_number(words)
    if number is not None:
        return Command(Ask.NUMBER, number, words)
    return Command(Ask.WORD, None, words)
