"""Numbers in, the words for them out: counts, ordinals, decimals, fractions, times."""

from __future__ import annotations

_UNITS = (
    "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven",
    "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen",
)  # fmt: skip
_TENS = ("", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety")
_ORDINALS = {
    "one": "first", "two": "second", "three": "third", "five": "fifth", "eight": "eighth",
    "nine": "ninth", "twelve": "twelfth",
}  # fmt: skip
_PARTS = {
    "½": (1, 2), "¼": (1, 4), "¾": (3, 4), "⅓": (1, 3), "⅔": (2, 3),
    "⅛": (1, 8), "⅜": (3, 8), "⅝": (5, 8), "⅞": (7, 8),
}  # fmt: skip
_DENOMINATORS = {
    2: "half",
    3: "third",
    4: "quarter",
    5: "fifth",
    8: "eighth",
    10: "tenth",
    16: "sixteenth",
}
MOST = 999_999
"""Larger numbers are read digit by digit: no pattern counts so far, so they are a catalogue
number.
"""


def number_words(number: int) -> str:
    """ "twenty-four", "one hundred and five"; negative numbers with "minus"."""
    if number < 0:
        return f"minus {number_words(-number)}"
    if number > MOST:
        return " ".join(_UNITS[int(digit)] for digit in str(number))
    if number < 20:
        return _UNITS[number]
    if number < 100:
        tens, unit = divmod(number, 10)
        return _TENS[tens] + (f"-{_UNITS[unit]}" if unit else "")
    size, name = (1000, "thousand") if number >= 1000 else (100, "hundred")
    many, rest = divmod(number, size)
    words = f"{number_words(many)} {name}"
    if not rest:
        return words
    return f"{words} and {number_words(rest)}" if rest < 100 else f"{words} {number_words(rest)}"


def ordinal_words(number: int) -> str:
    """ "first", "twenty-second", "one hundred and fifth"."""
    words = number_words(number)
    cut = max(words.rfind("-"), words.rfind(" ")) + 1
    head, last = words[:cut], words[cut:]
    if last in _ORDINALS:
        return head + _ORDINALS[last]
    if last.endswith("y"):
        return f"{head}{last[:-1]}ieth"
    return f"{head}{last}th"


def decimal_words(text: str) -> str:
    """ "2.5" -> "two point five"; "4.0" -> "four". text: digits with one point or comma."""
    whole, _, part = text.replace(",", ".").partition(".")
    part = part.rstrip("0")
    words = number_words(int(whole or 0))
    if not part:
        return words
    return f"{words} point {' '.join(_UNITS[int(digit)] for digit in part)}"


def fraction_words(above: int, below: int) -> str:
    """ "a half", "three quarters", "five eighths"; other parts as "two over seven"."""
    name = _DENOMINATORS.get(below)
    if name is None or below == 0:
        return f"{number_words(above)} over {number_words(below)}"
    if above == 1:
        return f"an {name}" if name[0] == "e" else f"a {name}"
    return f"{number_words(above)} {'halve' if name == 'half' else name}s"


def mixed_words(whole: int, part: str) -> str:
    """A whole number (0 for none) and a part, "½" or "1/2", as "five and a half"."""
    if part in _PARTS:
        above, below = _PARTS[part]
    else:
        above, below = (int(piece) for piece in part.split("/"))
    words = fraction_words(above, below)
    return f"{number_words(whole)} and {words}" if whole else words


def times_words(number: int) -> str:
    """ "once", "twice", "six times"."""
    return {1: "once", 2: "twice"}.get(number, f"{number_words(number)} times")
