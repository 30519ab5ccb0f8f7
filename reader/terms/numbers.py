"""Numbers in words, ordinals and counts of times, as written patterns use them."""

from __future__ import annotations

import re

UNITS = {
    "zero": 0,
    "no": 0,
    "one": 1,
    "two": 2,
    "three": 3,
    "four": 4,
    "five": 5,
    "six": 6,
    "seven": 7,
    "eight": 8,
    "nine": 9,
    "ten": 10,
    "eleven": 11,
    "twelve": 12,
    "thirteen": 13,
    "fourteen": 14,
    "fifteen": 15,
    "sixteen": 16,
    "seventeen": 17,
    "eighteen": 18,
    "nineteen": 19,
}
TENS = {
    "twenty": 20,
    "thirty": 30,
    "forty": 40,
    "fifty": 50,
    "sixty": 60,
    "seventy": 70,
    "eighty": 80,
    "ninety": 90,
    "fourty": 40,
}
ORDINALS = {
    "first": 1,
    "second": 2,
    "third": 3,
    "fourth": 4,
    "fifth": 5,
    "sixth": 6,
    "seventh": 7,
    "eighth": 8,
    "ninth": 9,
    "tenth": 10,
    "eleventh": 11,
    "twelfth": 12,
    "thirteenth": 13,
    "fourteenth": 14,
    "fifteenth": 15,
    "sixteenth": 16,
    "seventeenth": 17,
    "eighteenth": 18,
    "nineteenth": 19,
    "twentieth": 20,
}
TENTHS = {"thirtieth": 30, "fortieth": 40, "fiftieth": 50}
TIMES = {"once": 1, "twice": 2, "thrice": 3}
"""How often, in one word."""


def word_number(words: str) -> int | None:
    """ "twenty two" -> 22, "a hundred and four" -> 104; None for anything else."""
    total: int | None = None
    for word in re.split(r"[\s-]+", words.lower().strip()):
        if word == "hundred" and total is not None:
            total *= 100
            continue
        if word == "and" and total is not None and total >= 100:
            continue
        value = 1 if word == "a" and total is None else TENS.get(word, UNITS.get(word))
        if value is None:
            return None
        total = value if total is None else total + value
    return None if words.strip().lower() == "a" else total


def number_said(said: str | None) -> int:
    """A number in figures or in words; 0 for anything else, and for nothing."""
    if not said:
        return 0
    return int(said) if said.isdecimal() else word_number(said) or 0


def ordinal_number(words: str) -> int | None:
    """ "twenty-first" -> 21, "third" -> 3; None for anything else."""
    *tens, last = re.split(r"[\s-]+", words.lower().strip())
    value = ORDINALS.get(last, TENTHS.get(last))
    if value is None or len(tens) > 1 or (tens and (tens[0] not in TENS or value > 9)):
        return None
    return value + (TENS[tens[0]] if tens else 0)


_BELOW_TWENTY = "|".join(sorted(sorted(set(UNITS) - {"zero", "no"}), key=len, reverse=True))
_TENS = "|".join(TENS)
SPELLED = (
    r"(?=[aefnost])"
    rf"(?:(?:(?:{_BELOW_TWENTY}|a) hundred(?: and)? )?(?:(?:{_TENS})(?:[ -](?:{_BELOW_TWENTY}))?"
    rf"|{_BELOW_TWENTY})|(?:{_BELOW_TWENTY}|a) hundred)\b"
)
"""A pattern for numbers in words; the letters that they begin with are looked for first."""
