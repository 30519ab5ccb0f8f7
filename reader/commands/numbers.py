"""Spoken numbers 0 to 999: words in, number out, and back."""

from __future__ import annotations

UNITS = [
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
]
TENS = ("", "", *["twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"])


def say_number(number: int) -> str:
    """ "twenty three"; no hyphen and no "and", as the ear's grammar writes it. 0 to 999."""
    if number < 20:
        return UNITS[number]
    if number < 100:
        tens, unit = divmod(number, 10)
        return TENS[tens] + (f" {UNITS[unit]}" if unit else "")
    hundreds, rest = divmod(number, 100)
    return f"{UNITS[hundreds]} hundred" + (f" {say_number(rest)}" if rest else "")


def say_figures(number: int) -> str:
    """Figure by figure: "one nine" for 19. number: from 0 on."""
    return " ".join(UNITS[int(figure)] for figure in str(number))


def read_number(words: str) -> int | None:
    """The number that words say, None when they say none: "twenty three", "23", "two three"."""
    total = 0
    seen = False
    said = words.replace("-", " ").lower().split()
    if len(said) > 1 and all(word in UNITS[:10] for word in said):
        return int("".join(str(UNITS.index(word)) for word in said[:6]))
    for word in said:
        if word.isdigit():
            total, seen = total + int(word[:6]), True
        elif word in UNITS:
            total, seen = total + UNITS.index(word), True
        elif word in TENS[2:]:
            total, seen = total + 10 * TENS.index(word), True
        elif word == "hundred":
            total, seen = max(total, 1) * 100, True
        elif word != "and":
            return None
    return total if seen else None


CONFUSABLE = tuple((10 + n, 10 * n) for n in range(3, 10))
"""Pairs such as thirteen and thirty: by the ear alike, so they are said back."""


def sounds_like(number: int) -> int | None:
    """The number it is easily taken for, None when there is none."""
    for teen, ten in CONFUSABLE:
        if number == teen:
            return ten
        if number == ten:
            return teen
    return None
