"""Spoken numbers in a sentence in, the same sentence with figures out; a screen is read so."""

from __future__ import annotations

import re
from functools import cache

from reader.wording.numbers import number_words

_MOST = 999
"""The largest number turned into figures; rows and stitches of a round stay below."""


def in_figures(sentence: str) -> str:
    """ "In the next twenty-seven stitches" as "In the next 27 stitches".

    "One" stays a word where it may be no number ("one of these"); so do ordinals ("the second
    chain").
    """
    figures = _pattern().sub(lambda found: str(_numbers()[found.group().lower()]), sentence)
    figures = _ONE.sub("1", figures)
    figures = re.sub(r"(\d) point (?=\d)", r"\1.", figures)
    # "Two eight millimetre eyes" are two, of eight millimetres.
    figures = re.sub(r"(?<![\d.])(\d{1,2}) (?=\d)", _in_words, figures)
    # Decimals are spoken one by one: "three point seven five".
    return re.sub(r"(?<=\.\d) (\d)\b(?!\.\d)", r"\1", figures)


_ONE = re.compile(
    r"(?<=\brow )one\b|(?<=\bround )one\b|(?<=\bpass )one\b|(?<=\bpart )one\b|(?<=\bsize )one\b"
    r"|(?<=[:;] )one(?=, )|\bone(?= (?:done|left|counted|too (?:many|few)|more than|stitch)\b)"
    r"|\bone(?= of \d| point \d)",
    re.IGNORECASE,
)
"""Where "one" is surely a number."""


def _in_words(found: re.Match[str]) -> str:
    words = number_words(int(found[1]))
    return f"{words if found.start() else words.capitalize()} "


@cache
def _numbers() -> dict[str, int]:
    numbers = (0, *range(2, _MOST + 1))
    return {number_words(number).lower(): number for number in numbers}


@cache
def _pattern() -> re.Pattern[str]:
    """Longest first, so that "twenty-seven" is not read as twenty."""
    longest_first = sorted(_numbers(), key=len, reverse=True)
    return re.compile(rf"\b(?:{'|'.join(map(re.escape, longest_first))})\b(?!-)", re.IGNORECASE)
