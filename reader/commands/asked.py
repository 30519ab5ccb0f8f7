"""Words that are known to be a phrase -> the command they stand for."""

from __future__ import annotations

from reader.commands.command import Ask, Command
from reader.commands.numbers import read_number
from reader.commands.phrases import ask_of


def command_of(words: str) -> Command:
    """The command of a phrase: a request, a number, or a word of the maker's own."""
    ask = ask_of(words)
    if ask is not None:
        return Command(ask, word=words)
    number = read_number(words)
    if number is not None:
        return Command(Ask.NUMBER, number, words)
    return Command(Ask.WORD, None, words)
