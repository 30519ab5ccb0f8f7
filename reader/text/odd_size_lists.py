"""Lists of so many numbers in odd manners, put as "60 (64,68)", length kept: "60 (64) 68", "60 (64
68)", "60 (64) (68)", "60 (64 ; 68)", "60 | 64 | 68", and "60, 64 and 68" in a text that begins so.
"""

from __future__ import annotations

import re
from itertools import pairwise

_N = r"\d{1,4}"
_NOT_BEHIND = r"(?<![\d/.,:*×x–—-])(?<!\d[ ])(?<![,;/][ ])"
SHAPES = tuple(
    re.compile(rf"{_NOT_BEHIND}(?P<list>{one})(?![\d/]|[.,]\d)")
    for one in (
        rf"{_N}\s?[(\[]\s?{_N}(?:(?:\s|\s[;]\s?|\s?[|]\s?){_N})+\s?[)\]]",
        rf"{_N}(?:\s?[(\[]\s?{_N}\s?[)\]]\s?{_N})+(?:\s?[(\[]\s?{_N}\s?[)\]])?",
        rf"{_N}(?:\s?[(\[]\s?{_N}\s?[)\]])+",
        rf"{_N}(?:\s?\|\s?{_N})+",
    )
)
BY_WORDS = re.compile(
    rf"{_NOT_BEHIND}(?P<list>{_N}(?:,\s?{_N})*,?\s(?:and|or)\s{_N})(?![\d/]|[.,]\d)"
)
BEGUN = re.compile(r"\b(?:cast\W+on|co|ch|chain)\s$", re.IGNORECASE)
ROWS = re.compile(r"\b(?:rows?|r(?:ou)?nds?|rds?|r|sizes?|ages?|pages?|steps?)\W*$", re.IGNORECASE)
"""Before a list that is none of stitches."""
FARTHEST = 4


def usual_lists(text: str, sizes: int) -> str:
    """The text with such lists of one number for each size put as usual; of two sizes only those
    with upright strokes.
    """
    if sizes < 2:
        return text
    for shape in SHAPES if sizes > 2 else SHAPES[3:]:
        text = shape.sub(lambda found: _usual(found, sizes), text)
    begun = any(
        BEGUN.search(text, max(0, found.start() - 12), found.start()) is not None
        and len(_numbers(found)) == sizes
        for found in BY_WORDS.finditer(text)
    )
    return BY_WORDS.sub(lambda found: _usual(found, sizes), text) if begun and sizes > 2 else text


def has_odd_lists(text: str, sizes: int) -> bool:
    """Whether the text has a list in such manners."""
    return usual_lists(text, sizes) != text


def _numbers(found: re.Match[str]) -> list[int]:
    return [int(one) for one in re.findall(r"\d+", found["list"])]


def _usual(found: re.Match[str], sizes: int) -> str:
    numbers, start = _numbers(found), found.start()
    near = numbers[-1] <= FARTHEST * (numbers[0] + 1)
    if len(numbers) != sizes or not near or any(a > b for a, b in pairwise(numbers)):
        return found.group()
    if ROWS.search(found.string, max(0, start - 10), start) is not None:
        return found.group()
    # Line breaks within the list stay, behind it.
    more, broken = ",".join(map(str, numbers[1:])), "\n" * found.group().count("\n")
    for gap in (" ", ""):
        told = f"{numbers[0]}{gap}({more}){broken}"
        if len(told) <= len(found.group()):
            return told.ljust(len(found.group()))
    return found.group()
