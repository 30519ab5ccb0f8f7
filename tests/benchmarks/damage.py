"""Seeded damage to a pattern's text: what copying, scanning and tired typing do to it."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path
from random import Random

EXAMPLES = Path(__file__).parents[1] / "examples"
DEMOS = Path(__file__).parents[2] / "demos"
FRAGMENTS = (
    "*",
    "**",
    "rep from *",
    "(",
    ")",
    "[",
    "]",
    "x 6",
    "-1",
    "0",
    "999999999999",
    "½",
    "to last 3 sts",
    "inc",
    "dec",
    "sc",
    "k2tog",
    "yo",
    "rep rows 2-900",
    "repeat last 2 rows 15000 times",
    "ch 3",
    "turn",
    "as 4th row but",
    "Rnd 7:",
    "Rnds 9-3:",
    "until there are 0 sts",
    "\n\n",
    "\x00",
    "🧶",
    "S (M, L)",
    ";;",
    "every 4th row 5 times",
    "evenly",
    "in ring",
    "around",
    "=",
    "((((((((",
    "****",
    "from 1st *",
    "K-O",
)
"""Words of the trade and of trouble that are thrown into a text."""


def seeds() -> tuple[str, ...]:
    """The texts that are damaged: all example and demonstration patterns, in a fixed order."""
    paths = sorted(EXAMPLES.rglob("*.txt")) + sorted(DEMOS.glob("*.txt"))
    return tuple(path.read_text(encoding="utf-8") for path in paths)


def _spot(text: str, chance: Random) -> int:
    return chance.randrange(len(text) + 1)


def _drop(text: str, chance: Random) -> str:
    at = _spot(text, chance)
    return text[:at] + text[at + chance.choice((1, 1, 3, 20)) :]


def _double(text: str, chance: Random) -> str:
    at = _spot(text, chance)
    return text[:at] + text[max(0, at - chance.choice((1, 8, 60))) : at] + text[at:]


def _throw_in(text: str, chance: Random) -> str:
    at = _spot(text, chance)
    return text[:at] + chance.choice(FRAGMENTS) + text[at:]


def _digit(text: str, chance: Random) -> str:
    spots = [i for i, letter in enumerate(text) if letter.isdigit()]
    if not spots:
        return text
    at = chance.choice(spots)
    return text[:at] + str(chance.randrange(100)) + text[at + 1 :]


def _swap_lines(text: str, chance: Random) -> str:
    lines = text.split("\n")
    a, b = chance.randrange(len(lines)), chance.randrange(len(lines))
    lines[a], lines[b] = lines[b], lines[a]
    return "\n".join(lines)


def _join_lines(text: str, chance: Random) -> str:
    return text.replace("\n", " ", chance.randrange(1, 6))


def _noise(_: str, chance: Random) -> str:
    return "".join(chr(chance.choice((32, 42, chance.randrange(1, 0x2FF)))) for _ in range(80))


WAYS: tuple[Callable[[str, Random], str], ...] = (
    _drop, _double, _throw_in, _throw_in, _digit, _digit, _swap_lines, _join_lines, _noise,
)  # fmt: skip


def damaged(cases: int, seed: int) -> Iterator[str]:
    """That many damaged texts, the same for the same seed; one to six kinds of damage each."""
    chance = Random(seed)
    texts = seeds()
    for _ in range(cases):
        text = chance.choice(texts)
        start = chance.randrange(max(1, len(text) - 900))
        text = text[start : start + 900] if chance.random() < 0.7 else text
        for _ in range(chance.randrange(1, 7)):
            text = chance.choice(WAYS)(text, chance)
        yield text
