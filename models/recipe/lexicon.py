"""The words of the shipped graph, their phones, and how often phones follow each other in English.
"""

from __future__ import annotations

import itertools
import lzma
import math
from pathlib import Path

from models.recipe.phones import EXTRA, PHONES, dictionary

COMMON = 2_000
"""Common English words in the shipped graph beside the words of the trade; any other word is added
at run time.
"""
FILLERS = {
    "[unk]": 0.6,
    "[unk0]": -0.2,
    "[unk1]": 0.2,
    "[unk2]": 1.0,
    "[unk3]": 1.5,
    "[unk4]": 2.2,
    "[unk5]": 3.2,
}
"""Filler words and their cost a phone: the lower, the more speech they catch."""
FOLLOW_SHARE = 0.35
"""Weight of the phone pairs in the fillers' cost."""
NUMBERS = [
    "zero",
    "one",
    "two",
    "three",
    "four",
    "five",
    "six",
    "seven",
    "eight",
    "nine",
    "ten",
    "eleven",
    "twelve",
    "thirteen",
    "fourteen",
    "fifteen",
    "sixteen",
    "seventeen",
    "eighteen",
    "nineteen",
    "twenty",
    "thirty",
    "forty",
    "fifty",
    "sixty",
    "seventy",
    "eighty",
    "ninety",
    "hundred",
    "thousand",
    "half",
    "quarter",
]
TRADE = Path(__file__).with_name("words.txt")
"""Words that the program listens for and words of the trade, one a line."""


def common_words(count: int) -> list[str]:
    """The commonest English words by the package wordfreq (used to choose words only)."""
    from wordfreq import top_n_list

    return [word for word in top_n_list("en", count * 2) if word.isalpha() and word.isascii()][
        :count
    ]


def lexicon() -> dict[str, list[tuple[str, ...]]]:
    """Every word of the shipped graph with its pronunciations."""
    words = dictionary()
    wanted = [*NUMBERS, *TRADE.read_text(encoding="utf-8").split(), *common_words(COMMON)]
    out: dict[str, list[tuple[str, ...]]] = {}
    for word in wanted:
        ways = [EXTRA[word]] if word in EXTRA else words.get(word, [])
        if not ways and word.endswith("s") and word[:-1] in words:
            ways = [(*way, "Z") for way in words[word[:-1]]]
        if ways:
            out[word] = list(dict.fromkeys(ways))
    return out


def follow() -> list[list[float]]:
    """Costs [40][39] of a phone after a phone (row 39: at the start), zero on average, from running
    English.
    """
    from wordfreq import get_frequency_dict

    words = dictionary()
    seen = [[0.02] * 39 for _ in range(40)]
    last = [1e-9] * 39
    first = [1e-9] * 39
    for word, share in get_frequency_dict("en").items():
        if word not in words:
            continue
        numbers = [PHONES.index(phone) for phone in words[word][0]]
        first[numbers[0]] += share
        last[numbers[-1]] += share
        for before, phone in itertools.pairwise(numbers):
            seen[before][phone] += 100 * share
    for before in range(39):
        for phone in range(39):
            seen[before][phone] += 100 * last[before] * first[phone]
    seen[39] = [100 * share + 0.02 for share in first]
    costs = [[-math.log(count / sum(row)) for count in row] for row in seen]
    mean = (
        sum(
            sum(c * n for c, n in zip(cr, row, strict=True)) / sum(row)
            for cr, row in zip(costs, seen, strict=True)
        )
        / 40
    )
    return [[FOLLOW_SHARE * (cost - mean) for cost in row] for row in costs]


def write_dictionary(path: Path) -> None:
    """The whole pronouncing dictionary, packed: word, tab, phones; one way of saying it a line."""
    lines = [
        f"{word}\t{' '.join(way)}" for word, ways in sorted(dictionary().items()) for way in ways
    ]
    lines += [f"{word}\t{' '.join(way)}" for word, way in sorted(EXTRA.items())]
    path.write_bytes(lzma.compress("\n".join(lines).encode(), preset=9))
