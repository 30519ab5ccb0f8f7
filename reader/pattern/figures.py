"""Words as rules are looked for in: single spaces, numbers in figures, lists of sizes put down to
the number of one size; and where a place of them stood.
"""

from __future__ import annotations

import re

from reader.terms.numbers import ORDINALS, SPELLED, TENS, UNITS, word_number

PIECE = re.compile(
    r"(?P<space>\s\s+|[^\S ])|(?<= )(?P<also>&)(?= )|\b(?=[\daefnost])(?:"
    r"(?P<sizes>\d+\s*[(\[]\s*[\d—-]+(?:\s*[,;:/—-]\s*[\d—-]+)*\s*[)\]]"
    r"(?:\s*\d*\s*[(\[]\s*[\d—-]+(?:\s*(?:[,:;/—&-]|,?\s*and\b)\s*[\d—-]+)*\s*[)\]])*"
    r"|\d+(?:\s?[-,]\s?\d+)+(?=\s+(?:sts?|stitches|rows|rounds|times)\b)"
    r"|\d+(?:\s?[-/:—]\s?\d+){2,}\b)|(?P<old>\d{0,2}[23]d)\b"
    rf"|(?P<number>{SPELLED})|(?P<ordinal>(?:(?:twenty|thirty|forty|fifty)"
    rf"[ -])?(?:{'|'.join(ORDINALS)}))\b)",
    re.IGNORECASE,
)
"""What is put otherwise before rules are looked for: white space, numbers in words. The letters
that these begin with are looked for first, since most words have others.
"""


PARTED = re.compile(r"\d*[23]d\b|\s\s|[^\S ]|&|\d\s*[(\[]|\d\s?[-,/:—]\s?\d")
WORD = re.compile(r"[a-z]+")
NUMBERS = frozenset([*UNITS, *TENS, *ORDINALS, "hundred"])
"""Words without these, and without white space or numbers beside each other, stay as they are."""


def tightened(words: str, size: int = 0, sizes: int = 1) -> str:
    """The words with single spaces, numbers in figures and of one size only."""
    if not PARTED.search(words) and NUMBERS.isdisjoint(WORD.findall(words.lower())):
        return words
    return PIECE.sub(lambda found: _otherwise(found, size, sizes), words)


def place_in(words: str, at: int, size: int = 0, sizes: int = 1) -> int:
    """Where a place of the tightened words stands in the words."""
    made = last = 0
    for found in PIECE.finditer(words):
        if at < made + found.start() - last:
            break
        made += found.start() - last
        last = found.start()
        put = len(_otherwise(found, size, sizes))
        if at < made + put:
            return last
        made, last = made + put, found.end()
    return last + at - made


def _otherwise(found: re.Match[str], size: int, sizes: int) -> str:
    return _of_size(found, size, sizes) if found.group("sizes") else _in_figures(found)


def _of_size(found: re.Match[str], size: int, sizes: int) -> str:
    """The number of a size out of a list; the list as it stands where it has not one for each."""
    values = re.findall(r"\d+|(?<=[(\[,;:])\s*[-—](?=\s*[)\],;:])", found.group())
    if sizes < 2 or len(values) != sizes:
        return re.sub(r"\s+", " ", found.group())
    # "43(49,55)sts" had its space before the bracket was closed.
    space = " " * found.string[found.end() : found.end() + 1].isalpha()
    return (values[size] if values[size].isdigit() else "0") + space


def _in_figures(found: re.Match[str]) -> str:
    if found.group("space"):
        return " "
    if found.group("also"):
        return "and"
    if found.group("old"):
        # "2d and 3d rows"
        return f"{found.group()[:-1]}{'nd' if found.group()[-2] == '2' else 'rd'}"
    if found.group("number"):
        return str(word_number(found.group()) or 0)
    *tens, last = re.split(r"[\s-]+", found.group().lower())
    value = ORDINALS[last] + (TENS[tens[0]] if tens else 0)
    ending = {1: "st", 2: "nd", 3: "rd"}.get(value % 10 if value not in (11, 12, 13) else 0, "th")
    return f"{value}{ending}"
