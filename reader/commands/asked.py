"""Words that are known to be a phrase -> the command they stand for."""

from __future__ import annotations

from reader.commands.command import Ask, Command
from reader.commands.numbers import read_number
from reader.commands.phrases import ask_of

WITH_NUMBER: tuple[tuple[str, Ask], ...] = (
    ("go to row", Ask.GO_TO_ROW),
    ("go to round", Ask.GO_TO_ROW),
    ("rip back to row", Ask.RIP_BACK),
    ("rip back to round", Ask.RIP_BACK),
    ("rip back to", Ask.RIP_BACK),
    ("i have", Ask.I_HAVE),
)
"""Openings after which a number may follow at once, typed or spoken: "go to row five"."""

EXPLAINED = ("what is ", "explain ", "how do i ")
"""Openings after which a stitch or a short form may follow, typed: "what is dc2tog"."""

THIS_ONE = ("that", "this", "do that", "do this")

ENDINGS = (" stitches", " stitch")


def command_of(words: str) -> Command:
    """The command of a phrase: a request, one with its number, a number, or a word of one's own."""
    ask = ask_of(words)
    if ask is not None:
        return Command(ask, word=words)
    for opening, wanted in WITH_NUMBER:
        number = _number(words.removeprefix(opening)) if words.startswith(f"{opening} ") else None
        if number is not None:
            return Command(wanted, number, words)
    for opening in EXPLAINED:
        if words.startswith(opening):
            named = words.removeprefix(opening)
            return Command(Ask.EXPLAIN, word="" if named in THIS_ONE else named)
    number = read_number(words)
    if number is not None:
        return Command(Ask.NUMBER, number, words)
    return Command(Ask.WORD, None, words)


def is_name(phrase: str) -> bool:
    """Whether a phrase is no request and no number, with an attention word before it or not."""
    _, _, rest = phrase.partition(" ")
    return all(command_of(one).ask is Ask.WORD for one in (phrase, rest))


def opening_of(phrase: str) -> str:
    """What stands before the number of a request said in one breath, "go to row" of "go to row
    five", with an attention word before it; "" for any other phrase.
    """
    for opening, _ in WITH_NUMBER:
        before, found, number = phrase.rpartition(f"{opening} ")
        if found and len(before.split()) < 2 and _number(number) is not None:
            return f"{before}{opening}"
    return ""


def _number(words: str) -> int | None:
    for ending in ENDINGS:
        words = words.removesuffix(ending)
    return read_number(words.strip())
